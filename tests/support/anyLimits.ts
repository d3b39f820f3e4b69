import fc from 'fast-check';
import type { LimitChoice } from '#core/measures/measure';
import { mapMeasures } from '#core/measures/measures';
import type { Limits } from '#core/protocol/limits';

const within = ({ min, max }: LimitChoice) => fc.double({ min, max, noNaN: true });

/** Any limits that a document may hold. */
export const anyLimits: fc.Arbitrary<Limits> = fc.record(
  mapMeasures((_, { limits: { least, most }, isAlwaysLimited }) =>
    fc.record({ least: within(least), most: within(most) }, isAlwaysLimited ? {} : { requiredKeys: [] }),
  ),
  { requiredKeys: ['knee-angle'] },
) as fc.Arbitrary<Limits>;
