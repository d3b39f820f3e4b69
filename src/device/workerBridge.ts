import { releaseProxy, wrap, type Remote } from 'comlink';

/** A worker that is asked from here. */
export interface WorkerBridge<Calls> {
  /** The worker's answer; rejects where the worker has failed or ended, or does so before it answers. */
  ask<Value>(call: (remote: Remote<Calls>) => Promise<Value>): Promise<Value>;
  /** From now on nothing is answered, for this reason. Only the first reason counts. */
  fail(reason: Error): void;
  /** Rejects once the worker has failed or ended; never resolves. */
  readonly failed: Promise<never>;
  /** Fails, and ends the worker. */
  end(reason?: Error): void;
}

/**
 * Asks a worker, and lets go of it when it ends. What waits for an answer is in a list of its own: a race with a promise
 * that never settles would keep every answer for as long as the worker lives, and comlink what is never answered for as
 * long as the page does.
 *
 * @param explain  the reason where the worker can't start or stops; gets the browser's words, which may be ''
 */
export function createWorkerBridge<Calls>(
  worker: Worker,
  explain: (message: string) => Error,
): WorkerBridge<Calls> {
  const remote = wrap<Calls>(worker);
  const waiting = new Set<(reason: Error) => void>();
  let failure: Error | null = null;
  let hasEnded = false;
  let rejectFailed: (reason: Error) => void = () => undefined;
  const failed = new Promise<never>((_, reject) => (rejectFailed = reject));
  failed.catch(() => undefined); // Callers who care listen for it themselves.
  const fail = (reason: Error) => {
    if (failure !== null) return;
    failure = reason;
    rejectFailed(reason);
    for (const reject of waiting) reject(reason);
    waiting.clear();
  };
  worker.addEventListener('error', ({ message }) => fail(explain(message)));
  return {
    ask: (call) =>
      new Promise((resolve, reject) => {
        if (failure !== null) {
          reject(failure);
          return;
        }
        waiting.add(reject);
        void call(remote)
          .then(resolve, reject)
          .finally(() => waiting.delete(reject));
      }),
    fail,
    failed,
    end(reason = new Error('The worker was ended.')) {
      fail(reason);
      if (hasEnded) return;
      hasEnded = true;
      (remote as Remote<unknown>)[releaseProxy]();
      worker.terminate();
    },
  };
}
