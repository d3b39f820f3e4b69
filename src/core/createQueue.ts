/** Runs jobs one after another. */
export interface Queue {
  /** Runs a job after all that were added before it, whether they succeeded or failed. */
  add<Value>(job: () => Value | Promise<Value>): Promise<Value>;
  /** Resolves once all jobs added so far are over; never rejects. */
  idle(): Promise<unknown>;
}

export function createQueue(): Queue {
  let last: Promise<unknown> = Promise.resolve();
  return {
    add(job) {
      const result = last.then(job);
      last = result.catch(() => undefined);
      return result;
    },
    idle: () => last,
  };
}
