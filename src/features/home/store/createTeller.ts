import { heardOf } from '../guide/heardOf';
import type { GuideEvent } from '../guide/guideEvent';
import type { LiveSetEvent } from '#device/live/createLiveSet';
import { partOf } from './homeState';
import type { HomeStore } from './homeStore';

/** Tells the guide of repetitions, as they are found in the running recording. */
export interface Teller {
  /** A recording begins; of the same set some may have been told before. */
  startRecording(): void;
  /** What a recording tells counts from 'go' on; after a pause it goes on from where it was. */
  hear(event: LiveSetEvent): void;
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
