import { freeLegs, wornFootwear } from '#core/conditions/setConditions';
import { feedbackModes } from '#core/protocol/feedback';
import { supports } from '#core/protocol/support';
import { loadSchema } from '../schema/loadSchema';
import { z } from '../schema/zod';

/** Longest name of a stage, characters. */
const longestStage = 60;
/** No seat or step is higher, cm. */
const highest = 100;

const heightCm = z.number().min(0).max(highest);

/** Under what a set was done, as far as it decides what it can be compared with. Null: not noted. */
export const conditionsSchema = z.strictObject({
  stage: z.string().min(1).max(longestStage).nullable().describe('Of the stages of its plan item.'),
  seatHeightCm: heightCm.nullable(),
  stepHeightCm: heightCm.nullable(),
  support: z.enum(supports).nullable(),
  load: loadSchema.nullable(),
  footwear: z.enum(wornFootwear).nullable(),
  freeLeg: z.enum(freeLegs).nullable().describe('Where the leg that does not work was held.'),
  feedback: z.enum(feedbackModes).nullable(),
  isTest: z.boolean().describe('Whether it was done as a test; otherwise as training.'),
});
