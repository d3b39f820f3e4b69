import { loadKinds, loadPlaces, type Load } from '#core/protocol/load';
import { z } from './zod';

/** Longest level, characters. */
export const longestLevel = 40;

/** Load as every document holds it. */
export const loadSchema: z.ZodType<Load> = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('none') }),
  z.strictObject({
    kind: z.enum(loadKinds),
    level: z
      .string()
      .min(1)
      .max(longestLevel)
      .describe("The practice's own word: 'light', a colour, '5 kg'."),
    where: z.enum(loadPlaces),
  }),
]);
