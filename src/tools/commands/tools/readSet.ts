import { z } from 'zod';
import type { HeldExtremes, SetErrors } from '#core/chance/countInLine';
import type { EndLimits } from '#core/protocol/limits';
import { readShaped } from './readShaped';

const degrees = z.number().min(-360).max(360);
const limit = z.number();
const standardDeviation = z.number().min(0);

/**
 * The extremes of a set's knee angles, degrees. `inwardDeg` of a repetition is its largest angle and `outwardDeg` its
 * smallest: inward is positive, so a knee that went 4 degrees outward has -4. An outward limit is a distance: 10 and
 * -10 are the same.
 */
const setSchema = z
  .object({
    repetitions: z
      .array(
        z
          .object({ inwardDeg: degrees, outwardDeg: degrees.optional() })
          .refine(({ inwardDeg, outwardDeg = inwardDeg }) => outwardDeg <= inwardDeg, {
            path: ['outwardDeg'],
            error: 'outward is negative, so it is at most inwardDeg',
          }),
      )
      .min(1),
    limits: z.object({ inwardDeg: limit, outwardDeg: limit.optional() }),
    sharedSdDeg: standardDeviation,
    ownSdDeg: z.array(standardDeviation),
  })
  .refine(({ repetitions, ownSdDeg }) => repetitions.length === ownSdDeg.length, {
    path: ['ownSdDeg'],
    error: 'there must be one for each repetition',
  });

export interface ReadSet {
  repetitions: HeldExtremes[];
  limits: EndLimits;
  errors: SetErrors;
}

/**
 * The repetitions, limits and errors of a set, in the knee angle's own sign.
 *
 * @throws CommandProblem  where the file does not hold a set
 */
export function readSet(path: string): ReadSet {
  const { repetitions, limits, sharedSdDeg, ownSdDeg } = readShaped(path, setSchema, 'a set of repetitions');
  return {
    repetitions: repetitions.map(({ inwardDeg, outwardDeg }) => ({ most: inwardDeg, least: outwardDeg })),
    limits: {
      most: limits.inwardDeg,
      least: limits.outwardDeg === undefined ? undefined : -Math.abs(limits.outwardDeg),
    },
    errors: { sharedSd: sharedSdDeg, ownSds: ownSdDeg },
  };
}
