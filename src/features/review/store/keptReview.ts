import type { Limits } from '#core/protocol/limits';
import type { Side } from '#core/protocol/side';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import type { RecordingHead } from '#documents/recording/recordingHead';
import type { SessionSet } from '#documents/session/sessionDocument';

/** The home session that a recording belongs to, as far as a review needs it. */
export interface ReviewSession {
  id: string;
  /** A pseudonym; empty for a free recording. */
  patient: string;
  painBefore: number | null;
  painAfter: number | null;
  painLimit: number | null;
  effort: number | null;
  remark: string;
  line: SessionSet;
  /** Limits that its plan gives; null where the plan is not stored here. */
  planned: Limits | null;
  /** Result of the last such set with the leg that is not the line's, in words; null where none is stored. */
  otherSide: { side: Side; words: string } | null;
  /** Other recordings of the same patient, newest first, to be viewed next to this one. */
  others: readonly OtherRecording[];
}

export interface OtherRecording {
  recordingId: string;
  title: string;
  isOtherSide: boolean;
}

/** Where a review is saved, and its context. */
export interface KeptReview {
  session: ReviewSession | null;
  /** Replaces what was saved with the part; rejects with an error whose message can be shown. */
  save: (recording: RecordingHead) => Promise<void>;
  /** Reads another recording of the same patient, with its video where there is one. */
  readOther: (recordingId: string) => Promise<{ recording: RecordingDocument; video: File | null }>;
}

/**
 * Whether what is set in a review is saved. 'measured': it was measured here, and is saved nowhere yet; 'unsaved':
 * something was set, and there is nowhere to save it.
 */
export type KeepingState =
  { state: 'not-kept' | 'measured' | 'unsaved' | 'kept' | 'saving' } | { state: 'failed'; sentence: string };
