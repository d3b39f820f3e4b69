import { describe, expect, it } from 'vitest';
import { stepDownRating, type StepDownObservation } from '#core/assessments/stepDownRating';

const nothing: StepDownObservation = {
  armsUsed: false,
  trunkLeaned: false,
  pelvisLeftLevel: false,
  kneeInward: 'none',
  unsteady: false,
};

/** Points and classes: Piva et al. 2006, table as printed in PMC5095938. */
describe('stepDownRating(seen)', () => {
  it.each<[Partial<StepDownObservation>, number, string]>([
    [{}, 0, 'good'],
    [{ armsUsed: true }, 1, 'good'],
    [{ trunkLeaned: true, pelvisLeftLevel: true }, 2, 'medium'],
    [{ kneeInward: 'beyond-inner-border' }, 2, 'medium'],
    [{ kneeInward: 'beyond-second-toe', unsteady: true, armsUsed: true }, 3, 'medium'],
    [{ kneeInward: 'beyond-inner-border', trunkLeaned: true, unsteady: true }, 4, 'poor'],
    [
      {
        armsUsed: true,
        trunkLeaned: true,
        pelvisLeftLevel: true,
        kneeInward: 'beyond-inner-border',
        unsteady: true,
      },
      6,
      'poor',
    ],
  ])('gives %o %i points, %s', (seen, points, quality) => {
    expect(stepDownRating({ ...nothing, ...seen })).toEqual({ points, quality });
  });
});
