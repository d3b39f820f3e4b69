import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { taskIds, type TaskId } from '#core/exercises/exercises';
import { measure } from '#core/measurement/measure';
import { filmPerson } from '../../../support/syntheticPerson';

/**
 * The band depends on the posture as it is read, too: only peaks at about the same moment, give or take two frames, can
 * be compared, and trembling that reads an angle 5 degrees larger may narrow the band by a twentieth.
 */
const sameMomentMs = 70;

/** The inward peak of each repetition. */
function peaks(task: TaskId, noisePx: number, seed: number) {
  const repetitions = [{ peakDeg: 12 }, { peakDeg: 6 }];
  const { track } = filmPerson({ task, seed, repetitions, noisePx, camera: { yawDeg: 3 } });
  return measure(track, { task, side: 'left' }).repetitions.map(({ ranges }) => ranges['knee-angle'].max!);
}

describe('measure(track, setup) of trembling joints', { timeout: 60_000 }, () => {
  it.each(taskIds)('gives a wider band the more they tremble in nine of ten repetitions of a %s', (task) => {
    const isWider: boolean[] = [];
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1.5, noNaN: true }), fc.nat(1000), (noisePx, seed) => {
        // 4 px are 2 % of the shank, about twice what the band takes for the joints' placing, before smoothing.
        const trembling = peaks(task, noisePx + 4, seed);
        peaks(task, noisePx, seed).forEach(({ band, timeMs }, index) => {
          if (Math.abs(trembling[index]!.timeMs - timeMs) > sameMomentMs) return;
          isWider.push(trembling[index]!.band > band);
        });
      }),
      { numRuns: 10 },
    );
    expect(isWider.length).toBeGreaterThan(0);
    expect(isWider.filter(Boolean).length / isWider.length).toBeGreaterThanOrEqual(0.9);
  });
});
