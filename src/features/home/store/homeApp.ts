import type { StoreApi } from 'zustand/vanilla';
import type { KeypointRow } from '#core/keypoints/keypointTrack';
import type { Side } from '#core/protocol/side';
import type { SignId } from '#core/safety/signs';
import type { LiveKnee } from '#device/live/createLiveSet';
import type { TimeOfDay } from '#documents/calendar/writeReminders';
import type { FreeChoice } from '#documents/plan/freeRecording';
import type { SilenceReason } from '#documents/session/sessionDocument';
import type { GuidePress } from '../guide/guideEvent';
import type { HomeState, SoundState } from './homeState';

/** Joints of one picture of the camera, as they are found; px of the camera's picture, not mirrored. */
export interface SeenJoints {
  row: KeypointRow | null;
  widthPx: number;
  heightPx: number;
  /** How the working knee stands to its limits just now; null where that is not known. */
  knee: LiveKnee | null;
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
  /** Opens the plan of a link that was opened and is sealed. */
  openSealedPlan(passphrase: string): Promise<void>;
  openExamplePlan(): Promise<void>;
  /** @param isToRead  shows what it asks for, even to those who have followed it before */
  openKeptPlan(id: string, isToRead?: boolean): Promise<void>;
  /**
   * How much it hurts before the latest plan, which was followed before, is opened: an answer for each knee that is asked
   * about leads from 'plan' → 'check', above the limit → 'pain-before'.
   *
   * @param side  as for setPainBefore()
   */
  sayPainToday(score: number, side?: Side | null): Promise<void>;
  startFree(choice: FreeChoice): Promise<void>;
  /** 'plan' → 'past': how the last session of the latest plan went; back() returns. */
  showLastTime(): Promise<void>;
  /**
   * 'plan' → 'send', for a session that was kept earlier and not sent; back() returns. Its interrupted sets are kept
   * first.
   */
  showSending(sessionId: string): Promise<void>;
  /**
   * Saves a calendar file that reminds of a kept plan.
   *
   * @param perWeek  1 to 14
   */
  saveReminders(planId: string, perWeek: number, at: TimeOfDay): void;
  /** 'plan' → 'after': all of a kept plan was done without filming. */
  sayDone(planId: string): void;
  /**
   * Goes on with what is left of the latest plan, where a session of today was broken off, as openKeptPlan(): its
   * interrupted sets are kept, and what follows is a session of its own.
   */
  continueToday(): Promise<void>;
  /** Keeps why the plan was not followed for days, where that is asked. */
  answerSilence(planId: string, reason: SilenceReason): Promise<void>;
  /** It is not asked again before the plan was followed. */
  closeSilence(): Promise<void>;
  /** Makes a recording of an interrupted set; it is measured again from its video in the background. */
  recoverInterrupted(id: string): Promise<void>;
  dropInterrupted(id: string): void;
  undoDrop(id: string): void;

  /** 'last-time' → 'overview': a professional has seen it. @param who  in the patient's words */
  sayCleared(who: string): void;
  /** Nobody has seen it yet. */
  sayUnseen(): void;
  /** 'last-time' → 'overview' all the same, where it was nothing but pain. */
  goOnUnseen(): void;

  setConfirmed(isConfirmed: boolean): void;
  /** 'overview' → 'check', once confirmed. */
  confirm(): void;
  /** Step 'check': a warning sign that applies, null to take it back. */
  setSign(id: SignId | null): void;
  /** The whole list, not only what is new. */
  askAllSigns(): void;
  /** The knee is less swollen than before. */
  setLessSwollen(isLess: boolean): void;
  /**
   * 'check' → 'pain-before', where no sign applies; → 'camera' where it was said already how much it hurts.
   *
   * @param worst  most pain in the day after the last session, 0 to 10, where `askedAfter` names one; null: not answered
   */
  noneOfThese(worst?: number | null): void;
  /** One step back, before the exercise and from the pages after it. */
  back(): void;

  /**
   * 0 to 10; can be changed until the session is saved. Above the limit `painWarning` is set.
   *
   * @param side  which knee, where both are asked; null: both
   */
  setPainBefore(score: number, side?: Side | null): void;
  /**
   * 'pain-before' → 'camera', or → 'exercise' where no set needs a camera, or → 'check' where that comes after it; with
   * a warning only where the plan allows it.
   *
   * @param isTold  the person says that the therapist told them to go on at this score
   */
  goOnFromPain(isTold?: boolean): void;
  /** Ends before it began: because of a sign or of pain to 'summary', otherwise to 'plan'. What was said is kept. */
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

  /** One of `guide.presses`; 'stop' asks for the reason, which leads to the guide's phase 'stopped', as 'end' does. */
  press(press: GuidePress): void;
  setFurniturePlaced(isPlaced: boolean): void;
  setSound(change: Partial<Omit<SoundState, 'hasVoice'>>): void;
  /** 'exercise' → 'after', once the guide is at 'all-done' or 'stopped'. */
  finishExercise(): void;

  /** @param index  in `sets`. In a rest a score above the limit pauses the guide and sets `painWarning`. */
  setPainDuring(index: number, score: number): void;
  /** Continues after a warning in a rest, where the plan allows it: the therapist said so. */
  goOnInSpiteOfPain(): void;
  discardSet(index: number): void;
  undoDiscard(index: number): void;
  /** @param side  as for setPainBefore() */
  setPainAfter(score: number, side?: Side | null): void;
  /** The most pain in the day after the last session, 0 to 10, where nothing was asked before this one. */
  setWorstAfterLast(worst: number): void;
  /** Whether the person fell when they stopped. */
  setFell(fell: boolean): void;
  setEffort(score: number): void;
  setRemark(remark: string): void;
  /** 'after' → 'summary'; answers may be left out. From 'summary' it tries again where saving failed. */
  saveSession(): Promise<void>;

  /** Step 'summary': the first numbers, where better ones are still to come. */
  showFirstNumbers(): void;
  /** Step 'summary': what can be looked at in slow motion; back() leads to the result. */
  showReplay(): Promise<void>;
  /** Step 'summary': the page that sends the session; back() leads to the result. */
  showSendingNow(): void;
  saveSetFile(index: number): void;
  /** From 'summary' to 'plan', for another one. */
  startOver(): void;
}
