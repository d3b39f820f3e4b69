import type { TrackingProgress } from '#device/tracking/trackVideo';
import type { VideoFacts } from '#device/frames/frameSource';
import { defaultPoseModel, type PoseModel } from '#core/keypoints/poseModel';
import type { TimedSetup } from '#core/measurement/measureSet';
import { defaultLimits } from '#core/protocol/limits';
import type { Side } from '#core/protocol/side';
import type { Judgement } from '#core/scoring/judge';
import { startCorrections, type CorrectionHistory } from '#core/correction/correctionHistory';
import { emptyReview, type RecordingReview } from '#documents/recording/reviewSchema';
import type { DeviceState } from '#shell/tracking/deviceState';
import type { Problem } from '#shell/explainProblem';
import { startLimits, type LimitHistory } from './limitHistory';
import type { KeepingState, ReviewSession } from './keptReview';

export type ScreenName = 'start' | 'tracking' | 'review' | 'home' | 'inbox' | 'plan' | 'mirror';

export interface AppState {
  screen: ScreenName;
  /** Where the review leads back to: the home session or the kept sessions where it was opened from there. */
  backTo: 'start' | 'home' | 'inbox';
  /** Where the live mirror was opened, and leads back to. */
  mirrorBackTo: 'start' | 'review' | 'inbox';
  /** What the next recording is measured as; the side is asked for, never guessed. */
  setup: Omit<TimedSetup, 'side'> & { side: Side | null };
  model: PoseModel;
  /** The video that is ready to be tracked. */
  chosen: VideoFacts | null;
  /** What is being opened just now. */
  opening: 'example' | 'file' | null;
  /** Null while the model is made ready. */
  progress: TrackingProgress | null;
  problem: Problem | null;
  device: DeviceState;
  /** Raised with every new recording or measurement; the recording itself stands beside the store. */
  revision: number;
  limits: LimitHistory;
  corrections: CorrectionHistory;
  /** What can be taken back, last one last. */
  undoable: readonly ('limits' | 'correction')[];
  review: RecordingReview;
  /** Whether corrections, limits and remarks are kept on this device. */
  keeping: KeepingState;
  /** The home session that the recording belongs to; null where none is known. */
  session: ReviewSession | null;
  /** Initials or a role that stand beside what is set; empty where none was given. */
  reviewer: string;
  /** One a repetition of the recording. */
  judgements: readonly Judgement[];
  /** Repetitions whose verdict the last move of a limit changed; null before the first move. */
  changedVerdicts: number | null;
  /** Index of the repetition that is looked at; null where there is none. */
  selected: number | null;
}

export const initialState: AppState = {
  screen: 'start',
  backTo: 'start',
  mirrorBackTo: 'start',
  setup: { task: 'split-stance-sit-to-stand', side: null },
  model: defaultPoseModel,
  chosen: null,
  opening: null,
  progress: null,
  problem: null,
  device: { state: 'unknown' },
  revision: 0,
  limits: startLimits(defaultLimits),
  corrections: startCorrections(),
  undoable: [],
  review: emptyReview,
  keeping: { state: 'not-kept' },
  session: null,
  reviewer: '',
  judgements: [],
  changedVerdicts: null,
  selected: null,
};
