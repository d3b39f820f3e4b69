import { mean } from 'd3-array';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { measure } from '../../../src/measurement/measure';
import { taskIds, type TaskId } from '../../../src/protocol/tasks';
import { filmPerson } from '../../support/syntheticPerson';

/** Mean half-width of the bands of the inward peaks. */
function bandDeg(task: TaskId, noisePx: number, seed: number): number {
  const repetitions = [{ peakDeg: 12 }, { peakDeg: 6 }];
  const { track } = filmPerson({ task, seed, repetitions, noisePx, camera: { yawDeg: 3 } });
  return mean(
    measure(track, { task, side: 'left' }).repetitions,
    ({ kneeAngleMaxDeg }) => kneeAngleMaxDeg!.band,
  )!;
}

describe('measure(track, setup) of trembling joints', { timeout: 60_000 }, () => {
  it('gives wider bands the more they tremble, in every task', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...taskIds),
        fc.double({ min: 0, max: 1.5, noNaN: true }),
        fc.nat(1000),
        (task, noisePx, seed) => {
          // 4 px are 2 % of the shank, about twice what the band takes for the joints' placing, before smoothing.
          expect(bandDeg(task, noisePx + 4, seed)).toBeGreaterThan(bandDeg(task, noisePx, seed));
        },
      ),
      { numRuns: 20 },
    );
  });
});
