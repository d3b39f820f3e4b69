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
/** The knee is looked at this often, ms, but for no more than a fifth of the time. */
const kneeEveryMs = 200;
const restPerWork = 4;
let kneeDueMs = 0;

/** A set in a worker: measuring minutes of frames takes longer than a page may block. */
const worker = {
  begin(setup: LiveSetOptions): void {
    set = createLiveSet(setup);
  },
  push(frame: LiveFrame): LiveSetEvent[] {
    const events = begun().push(frame);
    const fromMs = performance.now();
    if (fromMs < kneeDueMs) return events;
    const knee = begun().knee();
    const nowMs = performance.now();
    kneeDueMs = nowMs + Math.max(kneeEveryMs, restPerWork * (nowMs - fromMs));
    return [...events, { kind: 'knee', knee }];
  },
  go: (timeMs: number): void => begun().go(timeMs),
  finish: (): FinishedSet => begun().finish(),
};

function begun(): LiveSet {
  if (set === null) throw new Error('A set must begin before its first frame.');
  return set;
}

export type LiveSetWorker = typeof worker;

expose(worker);
