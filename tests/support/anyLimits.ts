import fc from 'fast-check';
import {
  limitChoices,
  limitEnds,
  limitRangeDeg,
  type Limits,
  type MeasureLimits,
} from '#core/protocol/limits';
import { measureIds } from '#core/measures/measures';

const within = ({ min, max }: { min: number; max: number }) => fc.double({ min, max, noNaN: true });

const others: fc.Arbitrary<MeasureLimits> = fc.record(
  Object.fromEntries(
    measureIds.map((id) => [
      id,
      fc.record(Object.fromEntries(limitEnds.map((end) => [end, within(limitChoices[id][end])])), {
        requiredKeys: [],
      }),
    ]),
  ),
  { requiredKeys: [] },
);

/** Any limits that a document may hold. */
export const anyLimits: fc.Arbitrary<Limits> = fc.record(
  { kneeInwardDeg: within(limitRangeDeg), kneeOutwardDeg: within(limitRangeDeg), others },
  { requiredKeys: ['kneeInwardDeg', 'kneeOutwardDeg'] },
);
