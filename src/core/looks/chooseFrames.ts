import type { Measurement } from '../measurement/measurement';

/** How often a closer look is taken: with a bent leg under load, with a nearly straight one, and otherwise, Hz (docs/models.md). */
export const closerRatesHz = { bent: 7.5, straight: 3, resting: 1.5 };
/** No more frames than this are looked at where nothing is loaded: they tell the view, which is one number. */
const mostResting = 20;
/** Below this share of a repetition's depth the leg is nearly straight, and the knee has no room to go astray. */
const straightShare = 0.2;
/** So much before and after is looked at as well, ms. */
const aroundMs = 150;

/** A time in which a closer look pays for. */
export interface Stretch {
  fromMs: number;
  toMs: number;
  rateHz: number;
}

/**
 * Frames that a closer look pays for: often where the leg bears load, and now and then where the person sits or
 * stands, since the view is read there.
 *
 * @param timesMs  of all frames, increasing
 * @param stretches  in which more is looked at than at rest; where they overlap the highest rate counts
 * @returns  places of the frames, increasing
 */
export function chooseFrames(
  timesMs: Float64Array,
  stretches: readonly Stretch[],
  restingHz = closerRatesHz.resting,
): number[] {
  const rateAt = (timeMs: number) =>
    Math.max(
      0,
      ...stretches.map(({ fromMs, toMs, rateHz }) => (timeMs >= fromMs && timeMs <= toMs ? rateHz : 0)),
    );
  const rates = Array.from(timesMs, rateAt);
  const restingMs = rates.reduce(
    (sum, rate, frame) => sum + (frame > 0 && rate === 0 ? timesMs[frame]! - timesMs[frame - 1]! : 0),
    0,
  );
  const restingEveryMs = Math.max(1000 / restingHz, restingMs / mostResting);
  const chosen: number[] = [];
  let lastMs = -Infinity;
  timesMs.forEach((timeMs, frame) => {
    const everyMs = rates[frame] === 0 ? restingEveryMs : 1000 / rates[frame]!;
    // Half a millisecond, since times of frames are rounded.
    if (timeMs - lastMs < everyMs - 0.5) return;
    chosen.push(frame);
    lastMs = timeMs;
  });
  return chosen;
}

/** What loadedStretches needs to know of a measurement. */
export interface LoadedMoments {
  repetitions: readonly Pick<Measurement['repetitions'][number], 'loadedFrom' | 'loadedTo'>[];
  timesMs: Float64Array;
  curves: { depth: Pick<Measurement['curves']['depth'], 'values'> };
}

/** The stretches of repetitions in which the leg bears load, and within them those in which it is bent. */
export function loadedStretches({ repetitions, timesMs, curves }: LoadedMoments): Stretch[] {
  return repetitions.flatMap(({ loadedFrom, loadedTo }) => {
    const depths = curves.depth.values.subarray(loadedFrom, loadedTo + 1);
    const least = straightShare * depths.reduce((most, depth) => Math.max(most, depth), 0);
    const stretch = (from: number, to: number, rateHz: number): Stretch => ({
      fromMs: timesMs[loadedFrom + from]! - aroundMs,
      toMs: timesMs[loadedFrom + to]! + aroundMs,
      rateHz,
    });
    const bent: Stretch[] = [];
    let from: number | null = null;
    for (let i = 0; i <= depths.length; i++) {
      const isBent = i < depths.length && depths[i]! > least;
      if (isBent) from ??= i;
      else if (from !== null) {
        bent.push(stretch(from, i - 1, closerRatesHz.bent));
        from = null;
      }
    }
    return [stretch(0, depths.length - 1, closerRatesHz.straight), ...bent];
  });
}
