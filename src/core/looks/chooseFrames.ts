import type { MeasuredRepetition } from '../measurement/measurement';

/** How often a closer look is taken while the leg bears load, and otherwise, Hz (docs/models.md). */
export const closerRatesHz = { loaded: 7.5, resting: 3 };
/** No more frames than this are looked at where nothing is loaded: they tell the view, which is one number. */
const mostResting = 40;

/**
 * Frames that a closer look pays for: often where the leg bears load, and now and then where the person sits or
 * stands, since the view is read there.
 *
 * @param timesMs  of all frames, increasing
 * @param loadedMs  stretches in which the leg bears load, in order, ms
 * @returns  places of the frames, increasing
 */
export function chooseFrames(
  timesMs: Float64Array,
  loadedMs: readonly { fromMs: number; toMs: number }[],
  { loaded, resting } = closerRatesHz,
): number[] {
  const isLoaded = (timeMs: number) =>
    loadedMs.some(({ fromMs, toMs }) => timeMs >= fromMs && timeMs <= toMs);
  const restingMs = Array.from(timesMs).reduce(
    (sum, timeMs, frame) => sum + (frame > 0 && !isLoaded(timeMs) ? timeMs - timesMs[frame - 1]! : 0),
    0,
  );
  const restingEveryMs = Math.max(1000 / resting, restingMs / mostResting);
  const chosen: number[] = [];
  let lastMs = -Infinity;
  timesMs.forEach((timeMs, frame) => {
    const everyMs = isLoaded(timeMs) ? 1000 / loaded : restingEveryMs;
    // Half a millisecond, since times of frames are rounded.
    if (timeMs - lastMs < everyMs - 0.5) return;
    chosen.push(frame);
    lastMs = timeMs;
  });
  return chosen;
}

/** The stretches of repetitions in which the leg bears load, with a little around them, ms. */
export function loadedStretches(
  repetitions: readonly Pick<MeasuredRepetition, 'loadedFrom' | 'loadedTo'>[],
  sampleTimesMs: Float64Array,
): { fromMs: number; toMs: number }[] {
  const aroundMs = 150;
  return repetitions.map(({ loadedFrom, loadedTo }) => ({
    fromMs: sampleTimesMs[loadedFrom]! - aroundMs,
    toMs: sampleTimesMs[loadedTo]! + aroundMs,
  }));
}
