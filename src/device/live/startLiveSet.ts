import { wrap } from 'comlink';
import type { FinishedSet, LiveSetEvent, LiveSetOptions } from './createLiveSet';
import type { LiveFrame } from './liveFrame';
import type { LiveSetWorker } from './worker/liveSetWorker';

/** A set that is counted and judged in a worker. */
export interface RunningSet {
  push(frame: LiveFrame): void;
  /** @param timeMs  when a waiting set begins, on the clock of the frames */
  go(timeMs: number): void;
  /** The set as the review sees it, over all frames pushed so far; more may follow. */
  finish(): Promise<FinishedSet>;
  /** Rejects where counting has stopped because of a failure; never resolves. */
  readonly failed: Promise<never>;
  close(): void;
}

/** A worker that leaves so many frames without an answer for so long has died without a word. */
const silence = { frames: 20, ms: 10_000 };

/**
 * Starts counting and judging a set in a separate worker.
 *
 * @param onEvent  called with every count and verdict, in order
 */
export function startLiveSet(setup: LiveSetOptions, onEvent: (event: LiveSetEvent) => void): RunningSet {
  const worker = new Worker(new URL('./worker/liveSetWorker.ts', import.meta.url), { type: 'module' });
  const remote = wrap<LiveSetWorker>(worker);
  let fail: (reason: Error) => void = () => undefined;
  const failed = new Promise<never>((_, reject) => (fail = reject));
  failed.catch(() => undefined); // Callers who care listen for it themselves.
  worker.addEventListener('error', ({ message }) => {
    fail(new Error(`Counting could not start or has stopped${message ? ` (${message})` : ''}.`));
  });
  let isOpen = true;
  let unanswered = 0;
  let answeredMs = performance.now();
  remote.begin(setup).catch(fail);
  return {
    push(frame) {
      // The frames count too: after a sleep of the device the first answer is as late as the first frame.
      if (++unanswered > silence.frames && performance.now() - answeredMs > silence.ms)
        fail(new Error('Counting does not answer.'));
      remote.push(frame).then((events) => {
        unanswered = 0;
        answeredMs = performance.now();
        if (isOpen) events.forEach(onEvent);
      }, fail);
    },
    go: (timeMs) => void remote.go(timeMs).catch(fail),
    finish: () => Promise.race([remote.finish(), failed]),
    failed,
    close() {
      isOpen = false;
      fail(new Error('The set was closed.'));
      worker.terminate();
    },
  };
}
