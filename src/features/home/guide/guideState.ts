import type { ExerciseId } from '#core/exercises/exercises';
import type { Side } from '#core/protocol/side';
import type { SetStep } from '#documents/plan/planSteps';
import type { PlacingCost } from '../placing/placingCost';

export const guidePhases = [
  'placing', // getting into the picture
  'bends', // two easy bends on both legs, before the recording
  'standing', // quiet stand, the recording's beginning
  'ready', // into the start position
  'countdown',
  'working',
  'finishing', // a moment more of recording after the last repetition
  'paused',
  'set-done',
  'resting',
  'all-done',
  'stopped',
] as const;
export type GuidePhase = (typeof guidePhases)[number];

/** Why nobody is seen where the person may still be there. */
export type Unseen = 'no-pictures' | 'not-followed' | 'turned';
/** 'stop': somebody stopped, and is asked why. */
export type PauseReason = 'left-picture' | Unseen | 'button' | 'page-hidden' | 'camera-ended' | 'stop';

/** Why a session is ended before its time. */
export type StopReason = 'pain' | 'gave-way' | 'locked' | 'dizzy' | 'other' | 'ended';

/** What does not change on the way. */
export interface GuideOptions {
  /** At least one. */
  steps: readonly SetStep[];
  /** Pain above this means stop; said once, before the first movement. */
  painLimit: number;
  /** Said after a stop because of pain: what the plan says to do then. */
  beyondPainLimit: string;
  /** The same after the knee gave way or locked. */
  ifItGivesWay: string;
  /** Whether a repetition outside the limits has its own sound. */
  outsideSound: boolean;
}

/** What was done of one set; a set that was split because the camera stopped appears twice. */
export interface SetResult {
  stepIndex: number;
  itemIndex: number;
  task: ExerciseId;
  side: Side;
  number: number;
  /** Repetitions asked for; null for a hold. */
  prescribed: number | null;
  /** Null for a hold, and where the device could not count live. */
  counted: number | null;
  /** Null for repetitions. */
  heldMs: number | null;
  /** Why it ended early; null where it did not. */
  cutShort: string | null;
  /** Whether a recording of it is saved. */
  isRecorded: boolean;
}

/** Progress through the sets. Plain data; screens show its guideView. */
export interface GuideState {
  phase: GuidePhase;
  /** In the steps, from 0. */
  stepIndex: number;
  nowMs: number;
  /** When the phase began. */
  sinceMs: number;

  isPlaced: boolean;
  placedChangeMs: number;
  placingLine: string | null;
  placingCost: PlacingCost;
  /** The guide's last hint on what to move, and when it was given. */
  placingSaid: { line: string; atMs: number } | null;
  /** How often each hint was given in this set. */
  hints: Readonly<Record<string, number>>;
  /** How often the quiet stand of this set was ended by a check. */
  setbacks: number;
  /** What it costs that this set begins although a check is not good; 'nothing' as long as it is. */
  accepted: PlacingCost;
  /** When 'start anyway' was pressed in this set; null where it was not. */
  startAnywayMs: number | null;
  isPresent: boolean;
  presentChangeMs: number;
  /** Null where somebody is seen, or left. */
  unseen: Unseen | null;
  posture: 'seated' | 'standing' | null;
  postureChangeMs: number;
  /** What is still to be done for the quiet stand; null where nothing is, or nothing is known. */
  standLine: string | null;
  /** Whether it was said in this quiet stand. */
  isStandLineSaid: boolean;
  /** Whether a line is being said or waits to be. */
  isSpeaking: boolean;
  canCount: boolean;
  cameraWorks: boolean;
  isVisible: boolean;

  recording: 'off' | 'on' | 'paused';
  /** Whether work continues after a pause, so that quiet stand and bends are not repeated. */
  isResuming: boolean;
  isCounting: boolean;
  bends: number;
  /** Repetitions counted in this set, and those of them that an earlier result holds. */
  count: number;
  countBefore: number;
  /** Whether a part of the set was not counted. */
  hasMissed: boolean;
  /** When the last repetition was counted or asked for. */
  lastCountMs: number;
  /** Worked in this set, without pauses, ms. */
  workedMs: number;

  pauseReason: PauseReason | null;
  pausedFrom: GuidePhase | null;
  /** How long the phase that was paused had lasted, ms. */
  pausedAfterMs: number;

  results: readonly SetResult[];
  /** What was said last, in writing. */
  caption: string;
  /** When the rule was said; null where it was not yet. */
  ruleSaidMs: number | null;
  /** Whether it was answered how much the last set hurt. */
  isPainTold: boolean;
  stop: { reason: StopReason; line: string } | null;
}

export const stateAtRest: Omit<GuideState, 'nowMs'> = {
  phase: 'placing',
  stepIndex: 0,
  sinceMs: 0,
  isPlaced: false,
  placedChangeMs: 0,
  placingLine: null,
  placingCost: 'nothing',
  placingSaid: null,
  hints: {},
  setbacks: 0,
  accepted: 'nothing',
  startAnywayMs: null,
  isPresent: false,
  presentChangeMs: 0,
  unseen: null,
  posture: null,
  postureChangeMs: 0,
  standLine: null,
  isStandLineSaid: false,
  isSpeaking: false,
  canCount: true,
  cameraWorks: true,
  isVisible: true,
  recording: 'off',
  isResuming: false,
  isCounting: false,
  bends: 0,
  count: 0,
  countBefore: 0,
  hasMissed: false,
  lastCountMs: 0,
  workedMs: 0,
  pauseReason: null,
  pausedFrom: null,
  pausedAfterMs: 0,
  results: [],
  caption: '',
  ruleSaidMs: null,
  isPainTold: false,
  stop: null,
};
