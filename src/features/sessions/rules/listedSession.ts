import type { NotedConditions } from '#core/conditions/setConditions';
import type { Limits } from '#core/protocol/limits';
import type { Reopening } from '#documents/patient/reopeningsOf';
import type { LimitsSet } from '#documents/recording/reviewSchema';
import type { SessionDocument, SessionSet, Settlement } from '#documents/session/sessionDocument';
import type { SetReport } from './buildSetReport';
import type { PeakPoint } from './peakPoints';

/** What is known of a set's recording. */
export type SetReading =
  /** Nothing was recorded: a position that was held, or a set without a camera. */
  | { state: 'none' }
  | { state: 'reading' }
  | {
      state: 'read';
      result: SetReport;
      hasVideo: boolean;
      /** Whether the careful measuring from the stored video is still to come; until then the numbers are those tracked live. */
      isWaiting: boolean;
      /** How far each repetition went, as the course shows it; left out where it was not asked for. */
      course?: SetCourse;
      /** Whether it looks as if the other leg worked; left out where it does not. */
      isSideDoubtful?: boolean;
      /** Whether somebody reviewed it; left out where nobody did. */
      isReviewed?: boolean;
      /** Whether something was corrected by hand; left out where nothing was. */
      isByHand?: boolean;
    }
  /** It can't be read, or is no longer there; the sentence says why and what to do. */
  | { state: 'unreadable'; sentence: string };

export interface SetCourse {
  points: PeakPoint[];
  /** Those that it was judged by. */
  limits: Limits;
  /** Under what it was measured. */
  bendsFilmed: boolean;
  measuringVersion: number;
}

export interface ListedRecording {
  /** Its line in the session, with the leg that worked as its review has it. */
  line: SessionSet;
  reading: SetReading;
  /** The latest limits that its review set for later sets too; null where there are none. */
  limitsSet: LimitsSet | null;
  /** Limits that its plan gives; null where the plan is not kept here. */
  planned: Limits | null;
  /** Under what its plan asks for it; null where the plan is not kept here. What the session notes goes first. */
  asked?: NotedConditions | null;
}

/** A session as the list of kept sessions shows it, or a recording that belongs to none. */
export interface ListedSession extends Pick<
  SessionDocument,
  | 'id'
  | 'patient'
  | 'startedAt'
  | 'endedAt'
  | 'painBefore'
  | 'painAfter'
  | 'painBySide'
  | 'check'
  | 'afterLast'
  | 'wentOnAbove'
  | 'endedBecause'
  | 'settles'
  | 'isUnfilmed'
  | 'silence'
  | 'effort'
  | 'remark'
> {
  kind: 'visit' | 'recording';
  /** Pain above this means stop, 0 to 10; null where it is not known. */
  painLimit: number | null;
  /** Who says that what was said of the body is settled; null where nobody does. */
  settlement: Settlement | null;
  /** Whether something was said of the body that nobody has settled yet, or somebody opened again. */
  isOpen: boolean;
  /** Who last opened again what was settled, and when; left out where nobody did. */
  reopened?: Reopening;
  /** The plan that it followed; null without one. `madeAt` is null where it is not kept here. */
  plan: { id: string; madeAt: string | null } | null;
  /** Sets that the plan asks for; null without a plan that is kept here. */
  plannedSets: number | null;
  sets: readonly ListedRecording[];
}
