import type { StoreApi } from 'zustand/vanilla';
import type { KeypointRow } from '#core/keypoints/keypointTrack';
import type { FreeChoice } from '#documents/plan/freeRecording';
import type { GuidePress } from '../guide/guideEvent';
import type { HomeState, SoundState } from './homeState';

/** Joints of one picture of the camera, as they are found; px of the camera's picture, not mirrored. */
export interface SeenJoints {
  row: KeypointRow | null;
  widthPx: number;
  heightPx: number;
}

/** Which camera: one that is chosen by its id, or the one that faces this way. */
export type CameraChoiceWish = { deviceId: string } | { facing: 'front' | 'back' };

/**
 * Everything that can be done in a home session, over one store. No action throws or rejects: errors are put
 * in the state. An action that makes no sense in the current state does nothing.
 */
export interface HomeApp {
  readonly store: StoreApi<HomeState>;

  /** Id of the current session, or of the last one. */
  sessionId(): string;
  /** To be called when the home screen appears: opens storage, looks for interrupted sets, resumes measuring. */
  enter(): Promise<void>;
  /** Back to the first screen of the program; a set under way is ended and kept. */
  leave(): void;
  dismissProblem(): void;

  /** Step 'plan' → 'overview'; the plan is kept on this device once what it asks was confirmed. */
  openPlanFile(file: File): Promise<void>;
  /** @param fragment  the part of an address after '#', which may be anything */
  openPlanLink(fragment: string): Promise<void>;
  openExamplePlan(): Promise<void>;
  openKeptPlan(id: string): Promise<void>;
  startFree(choice: FreeChoice): void;
  /** Makes a recording of an interrupted set; it is measured again from its video in the background. */
  recoverInterrupted(id: string): Promise<void>;
  dropInterrupted(id: string): void;
  undoDrop(id: string): void;

  /** Step 'overview': a red flag by its id, null to take it back. */
  setRedFlag(id: string | null): void;
  setConfirmed(isConfirmed: boolean): void;
  /** 'overview' → 'pain-before', once confirmed and without a red flag. */
  confirm(): void;
  /** One step back, before the exercise. */
  back(): void;

  /** 0 to 10; can be changed until the session is saved. Above the limit `painWarning` is set. */
  setPainBefore(score: number): void;
  /** 'My therapist told me to continue at this pain.' */
  setToldToGoOn(isTold: boolean): void;
  /** 'pain-before' → 'camera', or → 'exercise' where no set needs a camera; not while a warning is unanswered. */
  goOnFromPain(): void;
  /** Ends before it began, because of pain: back to 'plan'. */
  stopBeforeStart(): void;

  /** Asks the browser for a camera; to be called in a tap, after the reason was read. Also mid-set, after its end. */
  openCamera(wish?: CameraChoiceWish): Promise<void>;
  /**
   * The way out without a camera, at step 'camera': a video from the device's own camera app becomes the next set that is
   * to be filmed.
   */
  openOwnRecording(file: File): Promise<void>;
  /** 'camera' → 'after', once sets came from videos. */
  finishOwnRecordings(): void;
  /** 'camera' → 'exercise', once the camera is on; the device may be tried out meanwhile. */
  startExercise(): void;
  /** The camera's picture, for a video element; null where none runs. Changes with `camera`. */
  stream(): MediaStream | null;
  /** Hears of the joints in every picture that was tracked; returns the way to stop. */
  watchJoints(watcher: (joints: SeenJoints) => void): () => void;

  /** One of `guide.presses`; 'stop-pain' and 'end' lead to the guide's phase 'stopped'. */
  press(press: GuidePress): void;
  setFurniturePlaced(isPlaced: boolean): void;
  setSound(change: Partial<Omit<SoundState, 'hasVoice'>>): void;
  /** 'exercise' → 'after', once the guide is at 'all-done' or 'stopped'. */
  finishExercise(): void;

  /** @param index  in `sets`. In a rest a score above the limit pauses the guide and sets `painWarning`. */
  setPainDuring(index: number, score: number): void;
  /** Continues after a warning in a rest: the therapist said so. Stopping is press('stop-pain'). */
  goOnInSpiteOfPain(): void;
  discardSet(index: number): void;
  undoDiscard(index: number): void;
  setPainAfter(score: number): void;
  setEffort(score: number): void;
  setRemark(remark: string): void;
  /** 'after' → 'summary'; answers may be left out. From 'summary' it tries again where saving failed. */
  saveSession(): Promise<void>;

  /** Opens the therapist's review of a set; Back leads to the home session. */
  reviewSet(index: number): Promise<void>;
  saveSetFile(index: number): void;
  /** From 'summary' to 'plan', for another one. */
  startOver(): void;
}
