import { awakeSentence } from '#device/camera/keepAwake';
import type { LiveFrame } from '#device/live/liveFrame';
import type { Sound } from '#device/sound/sound';
import { cautionsOf } from '#documents/plan/cautions';
import type { GuideEvent } from '../guide/guideEvent';
import type { GuideOptions } from '../guide/guideState';
import { startExercise, type Exercise } from './exercise';
import type { HomeAdapters } from './homeAdapters';
import type { HomeApp } from './homeApp';
import type { HomeCamera } from './homeCamera';
import { painWarningOf, partOf } from './homeState';
import type { HomeStorage } from './homeStorage';
import type { HomeStore } from './homeStore';
import type { PainWarnings } from './painWarnings';
import type { SetKeeper } from './setKeeper';

interface ExercisingParts {
  adapters: HomeAdapters;
  home: HomeStore;
  storage: Pick<HomeStorage, 'settleDrops' | 'resumeMeasuring'>;
  camera: HomeCamera;
  keeper: SetKeeper;
  sound: Sound;
  warnings: PainWarnings;
  /** What follows is a session of its own. */
  beginSession: () => void;
}

type Actions = Pick<
  HomeApp,
  'press' | 'setFurniturePlaced' | 'setSound' | 'finishExercise' | 'goOnInSpiteOfPain'
>;

export interface Exercising {
  /** Goes to step 'exercise'. */
  begin(): void;
  /** Ends it, where one is under way; what is recorded goes on to be kept. */
  end(): void;
  /** Whether its sets are done or stopped, so that leaving loses nothing. */
  isOver(): boolean;
  /** Tells the guide, where there is one. */
  send(event: GuideEvent): void;
  frame(frame: LiveFrame): void;
  actions: Actions;
}

/** The step 'exercise' from its beginning to its end. */
export function createExercising(parts: ExercisingParts): Exercising {
  const { adapters, home, storage, camera, keeper, sound, warnings, beginSession } = parts;
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
  const isOver = () => ['stopped', 'all-done'].includes(guideNow()?.phase ?? '');

  /** Nothing is filmed any longer than needed, and nothing goes on while a pain score above the limit stands. */
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
    begin() {
      storage.settleDrops();
      const { steps, plan, sound: wanted } = get();
      const { beyondPainLimit } = cautionsOf(plan);
      options = { steps, beyondPainLimit, outsideSound: wanted.outside };
      beginSession();
      enter('exercise', {}, { sets: [] });
      letSleep = adapters.keepAwake((state) => change('exercise', { awakeSentence: awakeSentence(state) }));
      exercise = startExercise({ adapters, home, options, camera, sound, keeper });
    },
    end,
    isOver,
    send,
    frame: (frame) => exercise?.frame(frame),
    actions: {
      press(press) {
        sound.unlock();
        const goesOn = press === 'resume' || press === 'skip-rest' || press === 'start-anyway';
        if (goesOn && warnings.isOfSet()) return;
        send({ kind: 'press', press });
        if (press === 'stop-pain') warnings.put(null);
      },
      setFurniturePlaced: (isFurniturePlaced) => change('exercise', { isFurniturePlaced }),
      setSound(changed) {
        const wanted = { ...get().sound, ...changed };
        set({ sound: wanted });
        sound.setOn(wanted);
        if (options !== null) options.outsideSound = wanted.outside;
      },
      goOnInSpiteOfPain() {
        if (!warnings.isOfSet()) return;
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
