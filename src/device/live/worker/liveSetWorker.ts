import { expose } from 'comlink';
import {
  createLiveSet,
  type FinishedSet,
  type LiveSet,
  type LiveSetEvent,
  type LiveSetOptions,
} from '../createLiveSet';
import type { LiveFrame } from '../liveFrame';

let set: LiveSet | null = null;

/** A set in a worker: measuring minutes of frames takes longer than a page may block. */
const worker = {
  begin(setup: LiveSetOptions): void {
    set = createLiveSet(setup);
  },
  push: (frame: LiveFrame): LiveSetEvent[] => begun().push(frame),
  go: (timeMs: number): void => begun().go(timeMs),
  finish: (): FinishedSet => begun().finish(),
};

function begun(): LiveSet {
  if (set === null) throw new Error('A set must begin before its first frame.');
  return set;
}

export type LiveSetWorker = typeof worker;

expose(worker);
