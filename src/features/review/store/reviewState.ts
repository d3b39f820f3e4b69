import { usualSureness, type Sureness } from '#core/chance/grade';
import type { TimedSetup } from '#core/measurement/measureSet';
import type { MeasureId } from '#core/measures/measures';
import { defaultLimits, type Limits } from '#core/protocol/limits';
import type { Side } from '#core/protocol/side';
import type { Judgement } from '#core/scoring/judge';
import type { VideoFacts } from '#device/frames/frameSource';
import { emptyReview, type RecordingReview } from '#documents/recording/reviewSchema';
import type { ShownProblem } from '#shell/explainProblem';
import type { ShownRecording } from '#shell/tracking/shownRecording';
import type { KeepingState, ReviewSession } from './keptReview';
import { startEdits, type ReviewEdits } from './reviewEdits';

export interface ReviewState {
  /** What the next recording is measured as; the side is asked for, never guessed. */
  setup: Omit<TimedSetup, 'side'> & { side: Side | null };
  /** The video that is ready to be tracked. */
  chosen: VideoFacts | null;
  /** What is being opened just now. */
  opening: 'example' | 'file' | null;
  problem: ShownProblem | null;
  /** What is reviewed, with everything known of each frame; null before the first one. */
  recording: ShownRecording | null;
  /** Limits in force. */
  limits: Limits;
  /** Corrections and changes of the limits, which can be undone. */
  edits: ReviewEdits;
  /** What the review adds to the recording: limits that were set, remarks, cues, 'reviewed'. */
  entries: RecordingReview;
  /** Whether corrections, limits and remarks are saved on this device. */
  keeping: KeepingState;
  /** The patient for whom it was kept here; null where it was not. */
  keptFor: string | null;
  /** When it was filmed, as far as its file says: a day. */
  filmedOn: string;
  /** Clips that were dropped together with the chosen one and are still to be measured. */
  waiting: readonly File[];
  /** The home session that the recording belongs to; null where none is known. */
  session: ReviewSession | null;
  /** Initials or a role shown next to what is set; empty where none was given. */
  reviewer: string;
  /** How sure it has to be before a side is named. */
  sureness: Sureness;
  /** One per repetition of the recording. */
  judgements: readonly Judgement[];
  /** Repetitions whose verdict the last move of a limit changed; null before the first move. */
  changedVerdicts: number | null;
  /** Index of the selected repetition; null where there is none. */
  selected: number | null;
  /** The one that the plot, its strip, the comparison with the set and the limits show. */
  measure: MeasureId;
}

export const initialReviewState: ReviewState = {
  setup: { task: 'split-stance-sit-to-stand', side: null },
  chosen: null,
  opening: null,
  problem: null,
  recording: null,
  limits: defaultLimits,
  edits: startEdits(),
  entries: emptyReview,
  keeping: { state: 'not-kept' },
  keptFor: null,
  filmedOn: '',
  waiting: [],
  session: null,
  reviewer: '',
  sureness: usualSureness,
  judgements: [],
  changedVerdicts: null,
  selected: null,
  measure: 'knee-angle',
};
