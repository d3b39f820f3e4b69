import type { TaskId } from '#core/exercises/exercises';
import type { PoseModel } from '#core/keypoints/poseModel';
import type { Limits } from '#core/protocol/limits';
import type { Side } from '#core/protocol/side';
import type { SignId } from '#core/safety/signs';
import type { Judgement } from '#core/scoring/judge';
import type { PainMoment } from '#documents/plan/cautions';
import type { PlanDocument, PlanItem } from '#documents/plan/planDocument';
import type { SetStep } from '#documents/plan/planSteps';
import type { Concern } from '#documents/session/concernsOf';
import type {
  Afterwards,
  SessionCheck,
  SessionDocument,
  Settlement,
  WentOn,
} from '#documents/session/sessionDocument';
import type { ShownProblem } from '#shell/explainProblem';
import type { ShownRecording } from '#shell/tracking/shownRecording';
import type { HeardVerdict } from '../guide/guideEvent';
import type { SetResult } from '../guide/guideState';
import type { GuideView } from '../guide/guideView';
import type { SetSummary } from '../guide/summariseSet';
import type { Placing } from '../placing/placing';
import type { ReplayPick } from '../rules/pickReplays';
import type { StepAtHome } from '../rules/stepAtHome';
import { nothingYet, type Today } from '../rules/today';
import type { UnsentSession } from '../rules/unsentSessions';
import type { ChangeSinceLast } from './changeSinceLast';

/** What is kept on this device; the sentence says why something is not, and what to do. */
export type StorageState =
  | { state: 'opening' }
  | { state: 'lasting' }
  /** Work continues, but recordings are lost with the tab unless saved as a file. */
  | { state: 'memory' | 'no-videos'; sentence: string }
  /** Nothing can be started until the page is reloaded. */
  | { state: 'blocked'; sentence: string };

/** A set whose recording was interrupted, from an earlier opening of the page. */
export interface InterruptedView {
  id: string;
  /** The session that it belongs to; null where it belongs to none. */
  sessionId: string | null;
  /** ISO 8601. */
  startedAt: string;
  task: TaskId;
  side: Side;
  /** How much of it is there, s. */
  seconds: number;
  /** 'dropped' can be undone until the next set begins or the home session is left. */
  state: 'offered' | 'keeping' | 'dropped';
}

/** The careful measuring of stored videos, while nothing is recorded. */
export interface BackgroundView {
  /** Sets that wait to be measured again from their video, the current one included. */
  waiting: number;
  /** The one that is being measured, and its share done, 0 to 1; null where none is. */
  current: { id: string; share: number } | null;
  isPaused: boolean;
  /** What went wrong, sentences. */
  problems: readonly string[];
}

export interface CameraOption {
  deviceId: string;
  label: string;
  facing: 'front' | 'back' | null;
}

export type CameraState =
  | { state: 'off' }
  | { state: 'asking' }
  /** `isMirrored`: show the picture as a mirror does; the data are never mirrored. */
  | { state: 'on'; camera: CameraOption; widthPx: number; heightPx: number; isMirrored: boolean }
  /** The sentence says what is wrong and every way out; see `openOwnRecording` and `openCamera`. */
  | { state: 'problem'; kind: string; sentence: string };

/** How fast this device follows the joints. */
export type PaceState =
  | { state: 'unknown' }
  | { state: 'checking' }
  /** `sentence` is null where there is no problem. */
  | { state: 'known'; model: PoseModel; hasFeedback: boolean; sentence: string | null };

export interface SoundState {
  voice: boolean;
  tones: boolean;
  /** A separate sound for a repetition outside the limits. */
  outside: boolean;
  /** Whether the device has a voice at all; captions come either way. */
  hasVoice: boolean;
}

/**
 * Where the numbers of a set come from: found while recording, of which better ones are 'coming' or not ('first'), or
 * 'careful' ones from its video.
 */
export type SetNumbers = 'none' | 'coming' | 'first' | 'careful';

/** A set that was done, or a part of one that was split because the camera stopped. */
export interface HomeSet {
  result: SetResult;
  item: PlanItem;
  /** Its recording document; null for a hold and where nothing was recorded. */
  recordingId: string | null;
  /** 'kept' on the device; 'memory' only until the tab is closed; 'none' where there is nothing to keep. */
  keeping: 'finishing' | 'kept' | 'memory' | 'none';
  /** Complete repetitions found in the recording; null until they are, and for holds. */
  found: number | null;
  /** One a complete repetition. */
  judgements: readonly Judgement[];
  /** For the patient; null for holds and until it is measured. */
  summary: SetSummary | null;
  numbers: SetNumbers;
  painDuring: number | null;
  /** Left out when the session is saved; can be undone until then. */
  isDiscarded: boolean;
  /** What went wrong with recording or keeping it; null where nothing did. */
  problem: string | null;
}

/** A pain score above the limit, with what to do. */
export interface PainWarning {
  when: PainMoment;
  score: number;
  advice: string;
  /** What is to be done then, in the words of whoever says it. */
  words: string;
  /** Whether the plan lets the person go on at this score if they were told to. */
  mayGoOn: boolean;
}

/** A repetition with all that is needed to draw it over its video. */
export interface Replay extends ReplayPick {
  recording: ShownRecording;
  limits: Limits;
}

/** An earlier session in which something was said of the body that nobody has settled yet. */
export interface EarlierSession {
  id: string;
  /** ISO 8601. */
  startedAt: string;
  concerns: readonly Concern[];
}

/** How much it hurts before the exercise. */
export type SaidPain = Pick<HomeCommon, 'painBefore' | 'painBySide'>;

/** What there is in every step. */
export interface HomeCommon {
  storage: StorageState;
  interrupted: readonly InterruptedView[];
  background: BackgroundView;
  /** Plans that were opened before, last one first; null until they are read. */
  plans: readonly PlanDocument[] | null;
  today: Today;
  /** Null for a free recording, and before anything was chosen. */
  plan: PlanDocument | null;
  /** Empty before anything was chosen. */
  steps: readonly SetStep[];
  /** What the device changed of the plan for this session, as the plan allows it. */
  stepped: readonly StepAtHome[];
  /** Null as long as it was not asked; of the knee that hurts more, where both are asked. */
  painBefore: number | null;
  /** Each knee by itself, where both legs work; otherwise null. */
  painBySide: SessionDocument['painBySide'];
  /** What was asked about warning signs; null as long as it was not answered. */
  check: SessionCheck | null;
  /** How the knee was after the last session; null as long as it was not answered. */
  afterLast: Afterwards | null;
  wentOnAbove: readonly WentOn[];
  endedBecause: SessionDocument['endedBecause'];
  /** What was said in earlier sessions and is settled, as was said in this one. */
  settles: readonly Settlement[];
  /** Whether the person did all of it without filming, as they say. */
  isUnfilmed: boolean;
  /** What was done so far. */
  sets: readonly HomeSet[];
  camera: CameraState;
  /** Names, and more than one, come only once a camera was allowed. */
  cameras: readonly CameraOption[];
  pace: PaceState;
  sound: SoundState;
  problem: ShownProblem | null;
}

/** What the person answers afterwards; anything may be skipped. */
export interface Answers {
  painAfter: number | null;
  effort: number | null;
  remark: string;
}

/** The way through a home session, with what each step has of its own; `exercise` is as many screens as the guide has phases. */
export interface StepParts {
  /** Choose a plan or a free recording; interrupted sets are offered here. */
  plan: {
    isOpening: boolean;
    /** Whether a link was opened whose plan needs its passphrase. */
    isSealed: boolean;
    /** What was said of the pain before the session that it begins. */
    painToday: SaidPain;
  };
  /** How the last session of the latest plan went. */
  past: {
    session: SessionDocument | null;
    told: readonly HomeSet[];
    change: ChangeSinceLast | null;
  };
  /** Sends a session that was kept earlier. */
  send: { session: UnsentSession | null };
  /** What is done, what is needed, cautions, red flags, confirmation. */
  overview: {
    /** Whether the person has confirmed the cautions. */
    isConfirmed: boolean;
    /** The keys that sealed sessions before, where this plan has others; null where nothing changed. */
    earlierKeys: readonly string[] | null;
  };
  /** What was said the last time, and nobody has settled; left out where there is nothing. */
  'last-time': {
    /** Not empty; the newest first. */
    earlier: readonly EarlierSession[];
    /** Whether the person says that nobody has seen it yet. */
    isUnseen: boolean;
  };
  /** The warning signs: all of them the first time, later what is new. */
  check: {
    asked: SessionCheck['asked'];
    /** The sign that the person says applies; nothing continues while there is one. */
    sign: SignId | null;
    /** The session after which it is asked how the knee was; null where that is not asked. */
    askedAfter: string | null;
    /** Whether the person says that the knee is less swollen than before. */
    isLessSwollen: boolean;
  };
  'pain-before': { painWarning: PainWarning | null };
  /** The reason, then the asking; left out where no set needs a camera. */
  camera: {
    /** Whether the plan was followed here before, so that nothing is explained again. */
    isAgain: boolean;
    /** Whether it is being found out if a camera opens without asking. */
    isLooking: boolean;
    /** Whether the videos of the session fit on the device, as far as it says. */
    hasRoom: boolean;
  };
  exercise: {
    /** Null until the guide has begun, and once it has ended. */
    guide: GuideView | null;
    /** Spoken or shown now. */
    caption: string;
    /** What the placing check sees; null where it is not looking. */
    placing: Placing | null;
    /** Whether the person has confirmed that chair or step stands where it should and can't slide. */
    isFurniturePlaced: boolean;
    /**
     * How each repetition of this set went, in order, regardless of the plan's feedback; null where it is not
     * known.
     */
    heard: readonly (HeardVerdict | null)[];
    painWarning: PainWarning | null;
    /** That the screen may switch itself off; null where it is kept on. */
    awakeSentence: string | null;
  };
  /** Pain during and after, effort, remark; then save. */
  after: Answers & { painWarning: PainWarning | null; saving: 'no' | 'saving' };
  /** 'failed': the device would not keep it; saveSession() tries again, and each set can be saved as a file. */
  summary: Answers & {
    saving: 'saving' | 'saved' | 'failed';
    page: 'result' | 'replay' | 'send';
    /** The sets as the result tells of them, which then changes no more; null until their numbers are final. */
    told: readonly HomeSet[] | null;
    /** What is different from the last time, beyond error; null where nothing is, or it is not known yet. */
    change: ChangeSinceLast | null;
    /** Repetitions of these that can be looked at in slow motion. */
    replays: readonly ReplayPick[];
    /** Those that are looked at. */
    shown: readonly Replay[];
  };
}
export type HomeStep = keyof StepParts;

/** The state at one step. */
export type HomeAt<S extends HomeStep> = HomeCommon & { step: S } & StepParts[S];
export type HomeState = { [S in HomeStep]: HomeAt<S> }[HomeStep];

export const initialCommon: HomeCommon = {
  storage: { state: 'opening' },
  interrupted: [],
  background: { waiting: 0, current: null, isPaused: false, problems: [] },
  plans: null,
  today: nothingYet,
  plan: null,
  steps: [],
  stepped: [],
  painBefore: null,
  painBySide: null,
  check: null,
  afterLast: null,
  wentOnAbove: [],
  endedBecause: null,
  settles: [],
  isUnfilmed: false,
  sets: [],
  camera: { state: 'off' },
  cameras: [],
  pace: { state: 'unknown' },
  sound: { voice: true, tones: true, outside: true, hasVoice: false },
  problem: null,
};

const noAnswers: Answers = { painAfter: null, effort: null, remark: '' };

/** Each step's own part as it begins. */
export const freshParts: StepParts = {
  plan: { isOpening: false, isSealed: false, painToday: { painBefore: null, painBySide: null } },
  past: { session: null, told: [], change: null },
  send: { session: null },
  overview: { isConfirmed: false, earlierKeys: null },
  'last-time': { earlier: [], isUnseen: false },
  check: { asked: 'all', sign: null, askedAfter: null, isLessSwollen: false },
  'pain-before': { painWarning: null },
  camera: { isAgain: false, isLooking: false, hasRoom: true },
  exercise: {
    guide: null,
    caption: '',
    placing: null,
    isFurniturePlaced: false,
    heard: [],
    painWarning: null,
    awakeSentence: null,
  },
  after: { ...noAnswers, painWarning: null, saving: 'no' },
  summary: {
    ...noAnswers,
    saving: 'saving',
    page: 'result',
    told: null,
    change: null,
    replays: [],
    shown: [],
  },
};

/** A step's own part of the state; where the session is at another step, its initial part. */
export function partOf<S extends HomeStep>(state: HomeState, step: S): StepParts[S] {
  return isAtStep(state, step) ? state : freshParts[step];
}

export function isAtStep<S extends HomeStep>(state: HomeState, step: S): state is HomeState & HomeAt<S> {
  return state.step === step;
}

/** The current warning; null in a step that knows none. */
export function painWarningOf(state: HomeState): PainWarning | null {
  return 'painWarning' in state ? state.painWarning : null;
}

/** What was answered so far. */
export function answersOf(state: HomeState): Answers {
  if (state.step !== 'after' && state.step !== 'summary') return noAnswers;
  const { painAfter, effort, remark } = state;
  return { painAfter, effort, remark };
}

/** Whether anything was said or done that is kept. */
export function hasSaid({ sets, painBefore, check, settles, endedBecause }: HomeCommon): boolean {
  return (
    sets.length > 0 || painBefore !== null || check !== null || settles.length > 0 || endedBecause !== null
  );
}

/** Whether the session is saved, after which it does not change. */
export function isSaved(state: HomeState): boolean {
  return state.step === 'summary' && state.saving === 'saved';
}

/** The part of a state that stays from step to step. */
export function commonOf(state: HomeState): HomeCommon {
  const { storage, interrupted, background, plans, today, plan, steps, stepped, painBefore, sets } = state;
  const { painBySide, check, afterLast, wentOnAbove, endedBecause, settles, isUnfilmed } = state;
  const { camera, cameras, pace, sound, problem } = state;
  return {
    storage,
    interrupted,
    background,
    plans,
    today,
    plan,
    steps,
    stepped,
    painBefore,
    painBySide,
    check,
    afterLast,
    wentOnAbove,
    endedBecause,
    settles,
    isUnfilmed,
    sets,
    camera,
    cameras,
    pace,
    sound,
    problem,
  };
}
