import type { LimitChoice, Measure } from '#core/measures/measure';
import { mapAlwaysLimited, mapMeasures, type MeasureId } from '#core/measures/measures';
import { z } from './zod';

const limitWithin = ({ min, max }: LimitChoice) => z.number().min(min).max(max);

const bothEnds = (_: MeasureId, { limits: { least, most } }: Measure) =>
  z.strictObject({ least: limitWithin(least), most: limitWithin(most) });

/** Limits as every document holds them. */
export const limitsSchema = z
  .strictObject({
    ...mapMeasures((id, measure) => bothEnds(id, measure).partial().optional()),
    ...mapAlwaysLimited(bothEnds),
  })
  .describe('In the unit and sign of each measure; left out where none is set.');
