import { z } from 'zod';
import { freeLegs, wornFootwear, type SetConditions } from '#core/conditions/setConditions';
import { taskIds } from '#core/exercises/exercises';
import { feedbackModes } from '#core/protocol/feedback';
import { sides } from '#core/protocol/side';
import { supports } from '#core/protocol/support';
import { loadSchema } from '#documents/schema/loadSchema';

const heightCm = z.number().min(0).max(200).nullable().default(null);

/** Under what a set was done; what is left out was not noted. */
export const conditionsSchema: z.ZodType<SetConditions> = z.strictObject({
  task: z.enum(taskIds),
  side: z.enum(sides),
  stage: z.string().nullable().default(null),
  seatHeightCm: heightCm,
  stepHeightCm: heightCm,
  support: z.enum(supports).nullable().default(null),
  load: loadSchema.nullable().default(null),
  footwear: z.enum(wornFootwear).nullable().default(null),
  freeLeg: z.enum(freeLegs).nullable().default(null),
  feedback: z.enum(feedbackModes).nullable().default(null),
  bendsFilmed: z.boolean(),
  isTest: z.boolean(),
  measuringVersion: z.int().min(1),
});
