import { describe, expect, it } from 'vitest';
import { measure } from '#core/measurement/measure';
import { filmPerson } from '../../../support/syntheticPerson';

describe('measure(track, setup) of somebody who sits for long between repetitions', () => {
  it.each(['split-stance-sit-to-stand', 'single-leg-sit-to-stand'] as const)(
    'finds the same repetitions and peaks of a %s as without the wait',
    (task) => {
      const film = (restMs: number) => {
        const repetitions = [{ peakDeg: 12 }, { peakDeg: 25 }];
        const { track } = filmPerson({ task, restMs, repetitions, rateHz: 15, noisePx: 1 });
        return measure(track, { task, side: 'left' });
      };
      const [short, long] = [film(900), film(60_000)];
      expect(long.repetitions.map(({ completeness }) => completeness)).toEqual(['complete', 'complete']);
      expect(Math.abs(long.legLengthPx! - short.legLengthPx!) / short.legLengthPx!).toBeLessThan(0.01);
      long.repetitions.forEach(({ ranges }, index) => {
        const peak = short.repetitions[index]!.ranges['knee-angle'].max!;
        expect(Math.abs(ranges['knee-angle'].max!.value - peak.value)).toBeLessThan(0.5);
      });
    },
  );
});
