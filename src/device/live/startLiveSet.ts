import { createWorkerBridge } from '../workerBridge';
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
  const bridge = createWorkerBridge<LiveSetWorker>(
    new Worker(new URL('./worker/liveSetWorker.ts', import.meta.url), { type: 'module' }),
    (message) => new Error(`Counting could not start or has stopped${message ? ` (${message})` : ''}.`),
  );
  let isOpen = true;
  let unanswered = 0;
  let answeredMs = performance.now();
  bridge.ask((remote) => remote.begin(setup)).catch(bridge.fail);
  return {
    push(frame) {
      // The frames count too: after a sleep of the device the first answer is as late as the first frame.
      if (++unanswered > silence.frames && performance.now() - answeredMs > silence.ms)
        bridge.fail(new Error('Counting does not answer.'));
      bridge
        .ask((remote) => remote.push(frame))
        .then((events) => {
          unanswered = 0;
          answeredMs = performance.now();
          if (isOpen) events.forEach(onEvent);
        }, bridge.fail);
    },
    go: (timeMs) => void bridge.ask((remote) => remote.go(timeMs)).catch(bridge.fail),
    finish: () => bridge.ask((remote) => remote.finish()),
    failed: bridge.failed,
    close() {
      isOpen = false;
      bridge.end(new Error('The set was closed.'));
    },
  };
}
