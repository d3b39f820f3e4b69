import { min, range, zip } from 'd3-array';
import { describe, expect, it } from 'vitest';
import { taskIds, type TaskId } from '#core/exercises/exercises';
import { measure } from '#core/measurement/measure';
import { quantileOf } from '#core/signal/quantileOf';
import { filmPerson } from '../../../support/syntheticPerson';

/**
 * From 1 px, as a good video has it, to 5 px: 2.5 % of the shank, about twice what the band assumes for the joints'
 * placing, before smoothing.
 */
const calmPx = 1;
const tremblingPx = 5;
/**
 * How much wider the usual band becomes, at least. It is more where the yaw is certain, and less where only a foot shows
 * it. The values are those of the synthetic person, rounded down: if only half the trembling counted, none is reached.
 */
const leastMedianGrowth: Record<TaskId, number> = {
  'split-stance-sit-to-stand': 1.4,
  'single-leg-sit-to-stand': 1.4,
  'single-leg-squat': 1.2,
  'sliding-leg-squat': 1.15,
  'lateral-step-down': 1.1,
  'hip-abduction-on-bent-leg': 1.6,
  'two-legged-bend': 1.3,
};
/** A single band may still shrink a little: trembling can move the peak to a moment whose posture is read better. */
const leastGrowth = 0.95;

/** The half-width of the band of each repetition's inward peak. */
function bandsDeg(task: TaskId, noisePx: number, seed: number) {
  const repetitions = [{ peakDeg: 12 }, { peakDeg: 6 }];
  const { track } = filmPerson({ task, seed, repetitions, noisePx, camera: { yawDeg: 3 } });
  return measure(track, { task, side: 'left' }).repetitions.map(
    ({ ranges }) => ranges['knee-angle'].max!.band,
  );
}

describe('measure(track, setup) of trembling joints', { timeout: 60_000 }, () => {
  it.each(taskIds)('gives wider bands the more the joints of a %s tremble', (task) => {
    const growth = range(12).flatMap((seed) =>
      zip(bandsDeg(task, calmPx, seed), bandsDeg(task, tremblingPx, seed)).map(
        ([calm, trembling]) => trembling! / calm!,
      ),
    );
    expect(growth).toHaveLength(24);
    expect(quantileOf(growth, 0.5)).toBeGreaterThan(leastMedianGrowth[task]);
    expect(min(growth)).toBeGreaterThan(leastGrowth);
  });
});
