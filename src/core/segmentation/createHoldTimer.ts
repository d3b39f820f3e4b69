/** How long one hold lasts, how often it is held, and how long the rest between holds is. */
export interface HoldSeries {
  seconds: number;
  holds: number;
  restSeconds: number;
}

/** Progress of a series of holds. */
export interface HoldState {
  phase: 'holding' | 'resting' | 'done';
  /** From 1; the number of the hold in progress, of the one before the rest, or of the last. */
  hold: number;
  /** Time left of the hold or the rest, rounded up, so that it ends on 0. */
  secondsLeft: number;
  /** Total time held, without pauses and rests, ms. */
  heldMs: number;
}

export interface HoldTimer {
  /** @param nowMs  any clock that only goes forward */
  at(nowMs: number): HoldState;
  /** Stops the clock until resume; a second call changes nothing. */
  pause(nowMs: number): void;
  resume(nowMs: number): void;
}

/** Times a series of holds with rests between, from the moment it is made; pauses do not count. */
export function createHoldTimer({ seconds, holds, restSeconds }: HoldSeries, startMs: number): HoldTimer {
  const [holdMs, restMs] = [seconds * 1000, restSeconds * 1000];
  const allMs = holds * holdMs + (holds - 1) * restMs;
  let pausedMs = 0;
  let pausedAtMs: number | null = null;
  return {
    at(nowMs) {
      const ranMs = Math.max(0, (pausedAtMs ?? nowMs) - startMs - pausedMs);
      if (ranMs >= allMs) return { phase: 'done', hold: holds, secondsLeft: 0, heldMs: holds * holdMs };
      const before = Math.floor(ranMs / (holdMs + restMs));
      const intoMs = ranMs - before * (holdMs + restMs);
      const holding = intoMs < holdMs;
      return {
        phase: holding ? 'holding' : 'resting',
        hold: before + 1,
        secondsLeft: Math.ceil(((holding ? holdMs : holdMs + restMs) - intoMs) / 1000),
        heldMs: before * holdMs + Math.min(holdMs, intoMs),
      };
    },
    pause(nowMs) {
      pausedAtMs ??= nowMs;
    },
    resume(nowMs) {
      if (pausedAtMs === null) return;
      pausedMs += nowMs - pausedAtMs;
      pausedAtMs = null;
    },
  };
}
