import { describe, expect, it } from 'vitest';
import { measure } from '#core/measurement/measure';
import { filmPerson } from '../../../support/syntheticPerson';

/** As far as two repetitions of one peak may differ, degrees: 15 frames a second fall elsewhere in each. */
const apartDeg = 1;

describe('measure(track, setup) of a set of 200 repetitions', () => {
  it.each(['split-stance-sit-to-stand', 'single-leg-squat'] as const)(
    'finds all of a %s, in order',
    (task) => {
      const peakDeg = (number: number) => (number % 2 === 0 ? 4 : 16);
      const repetitions = Array.from({ length: 200 }, (_, number) => ({
        peakDeg: peakDeg(number),
        movingMs: 1600,
      }));
      const { track } = filmPerson({ task, repetitions, restMs: 700, rateHz: 15 });
      const measured = measure(track, { task, side: 'left' });
      expect(measured.repetitions).toHaveLength(200);
      const peaks = measured.repetitions.map(({ ranges }) => ranges['knee-angle'].max!.value);
      measured.repetitions.forEach(({ completeness, number }, at) => {
        expect(completeness).toBe('complete');
        expect(number).toBe(at + 1);
        expect(Math.abs(peaks[at]! - peaks[at % 2]!)).toBeLessThan(apartDeg);
      });
    },
  );
});
