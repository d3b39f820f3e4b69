import type { LiveSetEvent } from '#device/live/createLiveSet';
import type { GuideEvent } from '../guide/guideEvent';
import { heardOf } from '../guide/heardOf';
import { partOf } from './homeState';
import type { HomeStore } from './homeStore';

/** Tells the guide of repetitions, as they are found in the running recording. */
export interface Teller {
  /** A recording begins; some of the same set may have been reported before. */
  startRecording(): void;
  /** Repetitions count from 'go'; after a pause counting continues. */
  hear(event: Exclude<LiveSetEvent, { kind: 'knee' }>): void;
}

export function createTeller(
  { get, change }: Pick<HomeStore, 'get' | 'change'>,
  send: (event: GuideEvent) => void,
  isWorking: () => boolean,
): Teller {
  const heardSoFar = () => partOf(get(), 'exercise').heard;
  let told = 0;
  let toldBefore = 0;
  return {
    startRecording() {
      told = 0;
      toldBefore = heardSoFar().length;
    },
    hear(event) {
      if (event.kind === 'counted') {
        for (; told < event.count && isWorking(); told++) {
          change('exercise', { heard: [...heardSoFar(), null] });
          send({ kind: 'repetition', heard: null });
        }
        return;
      }
      const index = event.count - 1;
      if (index >= told) return;
      const heard = heardOf(event.judgement);
      const changed = heardSoFar().map((earlier, at) => (at === toldBefore + index ? heard : earlier));
      change('exercise', { heard: changed });
      if (index === told - 1) send({ kind: 'judged', heard });
    },
  };
}
