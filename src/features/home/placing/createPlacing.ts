import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import type { Setup } from '#core/measurement/measurement';
import { checkPlacing } from './checkPlacing';
import type { Placing, PlacingCheck, PlacingCheckId, PlacingFacts } from './placing';

/** Everything has to be good for this long before it goes green, ms. */
const settleMs = 1000;
/** What is said stays for at least this long, so that nobody is sent two ways at once, ms. */
const leastSaidMs = 1000;

export interface LivePlacing {
  /**
   * Takes in what is seen now.
   *
   * @param window  joints of the last one to two seconds; its last time is now
   */
  update(window: KeypointTrack, setup: Setup, facts?: PlacingFacts): Placing;
}

/**
 * Checks the placing repeatedly without flickering: what is good stays good up to a wider limit, green comes
 * after a second of nothing in the way, and what is said stays for a second unless it is done.
 */
export function createPlacing(): LivePlacing {
  let goodBefore: ReadonlySet<PlacingCheckId> = new Set();
  let goodSinceMs: number | null = null;
  let said: { id: PlacingCheckId; sinceMs: number } | null = null;

  const keepSaying = ({ checks, first }: Placing, nowMs: number): PlacingCheck | null => {
    const before = checks.find(({ id, state }) => id === said?.id && state === 'move');
    if (said !== null && before !== undefined && nowMs - said.sinceMs < leastSaidMs) return before;
    if (first?.id !== said?.id) said = first === null ? null : { id: first.id, sinceMs: nowMs };
    return first;
  };

  return {
    update(window, setup, facts = {}) {
      const nowMs = window.timesMs.at(-1) ?? 0;
      const placing = checkPlacing(window, setup, facts, goodBefore);
      goodBefore = new Set(placing.checks.filter(({ state }) => state === 'good').map(({ id }) => id));
      if (!placing.ready) goodSinceMs = null;
      else goodSinceMs ??= nowMs;
      return {
        checks: placing.checks,
        ready: goodSinceMs !== null && nowMs - goodSinceMs >= settleMs,
        first: keepSaying(placing, nowMs),
      };
    },
  };
}
