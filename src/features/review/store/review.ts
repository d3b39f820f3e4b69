import type { StoreApi } from 'zustand/vanilla';
import type { Sureness } from '#core/chance/grade';
import type { CorrectionChange } from '#core/correction/correction';
import type { TaskId } from '#core/exercises/exercises';
import type { MeasureId } from '#core/measures/measures';
import type { Limits } from '#core/protocol/limits';
import type { Side } from '#core/protocol/side';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import type { RecordingReview } from '#documents/recording/reviewSchema';
import type { ShownRecording } from '#shell/tracking/shownRecording';
import type { KeptReview } from './keptReview';
import type { ReviewState } from './reviewState';

/** Measuring a recording and looking through it: all actions, on one store. */
export interface Review {
  readonly store: StoreApi<ReviewState>;

  /** Before there is a recording, these set what the next one is measured as; in its review, what it is. */
  setTask(task: TaskId): void;
  setSide(side: Side): void;
  /** Undefined where it is not known. */
  setBodyHeight(bodyHeightCm: number | undefined): void;

  openExample(): Promise<void>;
  /** Takes a video to be measured, or a recording document, which opens at once. */
  openFile(file: File): Promise<void>;
  /** The same for the first; the others wait their turn. */
  openFiles(files: readonly File[]): Promise<void>;
  /** Takes the next clip that waits. */
  openNext(): Promise<void>;
  /** Forgets the clips that wait. */
  forgetWaiting(): void;
  /**
   * Shows a recording that is kept on this device, with its video where there is one; leaving the review goes
   * back to where it was opened.
   *
   * @throws Error  where it can't be measured
   */
  openKept(
    recordingDocument: RecordingDocument,
    fileName: string,
    video: File | null,
    kept?: KeptReview,
  ): void;
  /** Ends a closer look that is under way; what it has seen so far stays. */
  stopCloserLook(): void;
  attachVideo(file: File): Promise<void>;
  /**
   * Reads another kept recording of the same patient, to be viewed next to the shown one.
   *
   * @throws Error  with a sentence that can be shown
   */
  readBeside(recordingId: string): Promise<ShownRecording>;
  /** Tracks the chosen video and measures it. */
  startTracking(): Promise<void>;
  /** Tracks the shown recording's video again on this device. */
  trackAgain(): Promise<void>;

  select(index: number): void;
  /** Shows a measure in the plot, its strip, the comparison with the set and the limits. */
  showMeasure(measure: MeasureId): void;

  /** Corrects something by hand; the measurement is updated at once. */
  correct(change: CorrectionChange): void;
  moveLimits(next: Limits): void;
  endLimitMove(): void;
  /** Sets both limits at once. */
  putLimits(limits: Limits): void;
  /** Whether the limits last set here hold for the patient's later sets of this task and side as well. */
  holdForLater(isForLater: boolean): void;
  /** Sets how sure it has to be before a side is named, on this device from now on; not undone by `undo`. */
  beSure(sureness: Sureness): void;
  /** Undoes the last correction or move of a limit. */
  undo(): void;
  /** Redoes the correction that was undone last. */
  redo(): void;

  /** Sets the remark on a repetition (a time within it) or on the whole set (null); an empty one is removed. */
  setRemark(atMs: number | null, text: string): void;
  markReviewed(isReviewed: boolean): void;
  setCues(cues: RecordingReview['cues']): void;
  setReviewer(name: string): void;

  /** Pseudonyms that are known on this device, in order; none where they can't be read. */
  knownPseudonyms(): Promise<readonly string[]>;
  /**
   * Keeps what is shown under a patient, who is added where there is none of that pseudonym.
   *
   * @param day  on which it was filmed, ISO 8601
   */
  keepFor(pseudonym: string, day: string): Promise<void>;
  saveRecording(): void;
  /** Saves the shown recording as CSV, one row per repetition or per frame. */
  saveTable(rows: 'repetitions' | 'frames'): void;

  dismissProblem(): void;
}
