import type { GuideEvent } from '../../guide/guideEvent';
import type { LiveSetEvent } from '../../live/createLiveSet';
import type { HomeState } from './homeState';

/** Tells the guide of repetitions, as they are found in the running recording. */
export interface Teller {
  /** A recording begins; of the same set some may have been told before. */
  startRecording(): void;
  /** What comes from here on counts; after a pause it goes on from where it was. */
  startCounting(): void;
  hear(event: LiveSetEvent): void;
}

export function createTeller(
  { get, set }: { get: () => HomeState; set: (change: Partial<HomeState>) => void },
  send: (event: GuideEvent) => void,
  isWorking: () => boolean,
): Teller {
  /** Complete repetitions that the recording shows, and those of them from before 'go'; null before it. */
  let count = 0;
  let countFrom: number | null = null;
  let told = 0;
  let toldBefore = 0;
  return {
    startRecording() {
      count = 0;
      countFrom = null;
      told = 0;
      toldBefore = get().heard.length;
    },
    startCounting() {
      countFrom ??= count;
    },
    hear(event) {
      if (event.kind === 'counted') count = event.count;
      if (countFrom === null) return;
      if (event.kind === 'counted') {
        for (; told < count - countFrom && isWorking(); told++) {
          set({ heard: [...get().heard, null] });
          send({ kind: 'repetition', heard: null });
        }
        return;
      }
      const index = event.count - 1 - countFrom;
      if (index < 0 || index >= told) return;
      const { verdict, direction } = event.judgement;
      const heard = { verdict, direction };
      set({ heard: get().heard.map((earlier, at) => (at === toldBefore + index ? heard : earlier)) });
      if (index === told - 1) send({ kind: 'judged', heard });
    },
  };
}
