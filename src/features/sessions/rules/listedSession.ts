import type { Limits } from '#core/protocol/limits';
import type { LimitsSet } from '#documents/recording/reviewSchema';
import type { SessionDocument, SessionSet } from '#documents/session/sessionDocument';
import type { SetReport } from './buildSetReport';

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
      /** Whether somebody looked it through; left out where nobody did. */
      isReviewed?: boolean;
      /** Whether something was corrected by hand; left out where nothing was. */
      isByHand?: boolean;
    }
  /** It can't be read, or is no longer there; the sentence says why and what to do. */
  | { state: 'unreadable'; sentence: string };

export interface ListedRecording {
  /** Its line in the visit. */
  line: SessionSet;
  reading: SetReading;
  /** Limits that were set in its review last; null where none were. */
  limitsSet: LimitsSet | null;
  /** Limits that its plan gives; null where the plan is not kept here. */
  planned: Limits | null;
}

/** A visit as the inbox shows it, or a recording that belongs to none. */
export interface ListedSession extends Pick<
  SessionDocument,
  'id' | 'patient' | 'startedAt' | 'endedAt' | 'painBefore' | 'painAfter' | 'effort' | 'remark'
> {
  kind: 'visit' | 'recording';
  /** Pain above this means stop, 0 to 10; null where nothing tells it. */
  painLimit: number | null;
  /** The plan that it followed; null without one. `madeAt` is null where it is not kept here. */
  plan: { id: string; madeAt: string | null } | null;
  /** Sets that the plan asks for; null without a plan that is kept here. */
  plannedSets: number | null;
  sets: readonly ListedRecording[];
}
