import { awakeSentence } from '#device/camera/keepAwake';
import type { LiveKnee } from '#device/live/createLiveSet';
import type { LiveFrame } from '#device/live/liveFrame';
import type { Sound } from '#device/sound/sound';
import { cautionsOf, saidBy } from '#documents/plan/cautions';
import type { EndReason } from '#documents/session/sessionDocument';
import type { GuideEvent, GuidePress } from '../guide/guideEvent';
import type { GuideOptions } from '../guide/guideState';
import { startExercise, type Exercise } from './exercise';
import type { HomeAdapters } from './homeAdapters';
import type { HomeApp } from './homeApp';
import type { HomeCamera } from './homeCamera';
import { painWarningOf, partOf } from './homeState';
import type { HomeStorage } from './homeStorage';
import type { HomeStore } from './homeStore';
import type { PainWarnings } from './painWarnings';
import type { SessionSaver } from './sessionSaver';
import type { SetKeeper } from './setKeeper';

interface ExercisingParts {
  adapters: HomeAdapters;
  home: HomeStore;
  storage: Pick<HomeStorage, 'settleDrops' | 'resumeMeasuring'>;
  camera: HomeCamera;
  keeper: SetKeeper;
  sound: Sound;
  warnings: PainWarnings;
  saver: Pick<SessionSaver, 'keep'>;
  /** The session's time begins now. */
  restartClock: () => void;
}

const stopReasons: Partial<Record<GuidePress, EndReason>> = {
  stop: 'not-told',
  'stop-pain': 'pain',
  'stop-gave-way': 'gave-way',
  'stop-locked': 'locked',
  'stop-dizzy': 'dizzy',
  'stop-other': 'other',
};

type Actions = Pick<
  HomeApp,
  'press' | 'setFurniturePlaced' | 'setSound' | 'finishExercise' | 'goOnInSpiteOfPain'
>;

export interface Exercising {
  /**
   * Goes to step 'exercise'.
   *
   * @param isSetUp  whether what the first task needs stands where it should, so that nobody is asked
   */
  begin(isSetUp: boolean): void;
  /** Ends it, where one is under way; saving of what was recorded continues. */
  end(): void;
  /** Whether its sets are done or stopped, so that leaving loses nothing. */
  isOver(): boolean;
  /** Tells the guide, where there is one. */
  send(event: GuideEvent): void;
  frame(frame: LiveFrame): void;
  knee(): LiveKnee | null;
  actions: Actions;
}

/** The step 'exercise' from its beginning to its end. */
export function createExercising(parts: ExercisingParts): Exercising {
  const { adapters, home, storage, camera, keeper, sound, warnings, saver, restartClock } = parts;
  const { get, set, change, enter } = home;
  let exercise: Exercise | null = null;
  let options: GuideOptions | null = null;
  let letSleep: (() => void) | null = null;

  const endFilming = () => {
    letSleep?.();
    letSleep = null;
    camera.close();
    change('exercise', { awakeSentence: null });
  };
  const end = () => {
    exercise?.close();
    exercise = null;
    options = null;
    endFilming();
    change('exercise', { guide: null, placing: null });
    void keeper.settled().then(storage.resumeMeasuring);
  };
  const send = (event: GuideEvent) => exercise?.send(event);
  const guideNow = () => partOf(get(), 'exercise').guide;
  /** A stop is kept the moment it is pressed, its reason the moment it is given. */
  const noteStop = (press: GuidePress) => {
    const reason = stopReasons[press];
    if (reason === undefined && press !== 'resume') return;
    set({ endedBecause: reason === undefined ? null : { reason, fell: null } });
    if (press === 'stop-pain') warnings.put(null);
    saver.keep();
  };
  const isOver = () => ['stopped', 'all-done'].includes(guideNow()?.phase ?? '');

  /** Nothing is filmed longer than needed, and nothing continues while a pain score above the limit is unanswered. */
  home.store.subscribe((state, before) => {
    const { guide } = partOf(state, 'exercise');
    if (exercise === null || guide === null || guide.phase === partOf(before, 'exercise').guide?.phase)
      return;
    if (painWarningOf(state)?.when === 'during') send({ kind: 'press', press: 'pause' });
    if (!isOver()) return;
    const mine = exercise;
    void keeper.settled().then(() => {
      if (exercise === mine) endFilming();
    });
  });

  return {
    begin(isSetUp) {
      storage.settleDrops();
      const { steps, plan, sound: wanted } = get();
      const cautions = cautionsOf(plan);
      options = {
        steps,
        painLimit: cautions.painLimit,
        beyondPainLimit: saidBy(cautions, cautions.beyondPainLimit),
        ifItGivesWay: saidBy(cautions, cautions.ifItGivesWay),
        outsideSound: wanted.outside,
      };
      restartClock();
      enter('exercise', {}, { sets: [] });
      letSleep = adapters.keepAwake((state) => change('exercise', { awakeSentence: awakeSentence(state) }));
      exercise = startExercise({ adapters, home, options, isSetUp, camera, sound, keeper });
    },
    end,
    isOver,
    send,
    frame: (frame) => exercise?.frame(frame),
    knee: () => exercise?.knee() ?? null,
    actions: {
      press(press) {
        sound.unlock();
        const goesOn = press === 'resume' || press === 'skip-rest' || press === 'start-anyway';
        if (goesOn && warnings.isOfSet()) return;
        const isAllowed = guideNow()?.presses.includes(press) === true;
        send({ kind: 'press', press });
        if (isAllowed) noteStop(press);
      },
      setFurniturePlaced: (isFurniturePlaced) => change('exercise', { isFurniturePlaced }),
      setSound(changed) {
        const wanted = { ...get().sound, ...changed };
        set({ sound: wanted });
        sound.setOn(wanted);
        if (options !== null) options.outsideSound = wanted.outside;
      },
      goOnInSpiteOfPain() {
        const warning = painWarningOf(get());
        if (warning?.when !== 'during' || !warning.mayGoOn) return;
        warnings.goOn(warning, adapters.now());
        saver.keep();
        warnings.put(null);
        send({ kind: 'press', press: 'resume' });
      },
      finishExercise() {
        if (get().step !== 'exercise' || !isOver()) return;
        end();
        enter('after', { painWarning: painWarningOf(get()) });
      },
    },
  };
}
