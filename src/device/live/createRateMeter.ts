/** Counts how often something happens. */
export interface RateMeter {
  count(nowMs: number): void;
  /** Times a second over the last two seconds; over the time so far where that is shorter. */
  perSecond(nowMs: number): number;
  /** Forgets everything counted, for example after a pause. */
  restart(nowMs: number): void;
}

const windowMs = 2000;

/** @param startMs  any clock that only goes forward */
export function createRateMeter(startMs: number): RateMeter {
  let fromMs = startMs;
  let timesMs: number[] = [];
  return {
    count(nowMs) {
      timesMs = timesMs.filter((timeMs) => timeMs > nowMs - windowMs);
      timesMs.push(nowMs);
    },
    perSecond(nowMs) {
      const overMs = Math.min(windowMs, nowMs - fromMs);
      if (overMs <= 0) return 0;
      return (timesMs.filter((timeMs) => timeMs > nowMs - overMs).length * 1000) / overMs;
    },
    restart(nowMs) {
      fromMs = nowMs;
      timesMs = [];
    },
  };
}
