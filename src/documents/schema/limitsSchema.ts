import { limitChoices, limitRangeDeg, type LimitChoice } from '#core/protocol/limits';
import { mapMeasures } from '#core/measures/measures';
import { z } from './zod';

const limitDeg = z.number().min(limitRangeDeg.min).max(limitRangeDeg.max);
const limitWithin = ({ min, max }: LimitChoice) => z.number().min(min).max(max).optional();

/** Limits as every document holds them. */
export const limitsSchema = z.strictObject({
  kneeInwardDeg: limitDeg,
  kneeOutwardDeg: limitDeg,
  others: z
    .strictObject(
      mapMeasures((id) =>
        z
          .strictObject({
            least: limitWithin(limitChoices[id].least),
            most: limitWithin(limitChoices[id].most),
          })
          .optional(),
      ),
    )
    .optional()
    .describe('Of other measures, in the unit and sign of each; left out where none is set.'),
});
