import type { Correction, CorrectionChange } from '#core/correction/correction';
import { keypointNames } from '#core/keypoints/keypointNames';
import { sides } from '#core/protocol/side';
import { z } from '../schema/zod';

/** Longest texts, characters. */
export const longestReason = 300;
export const longestName = 60;

const timeMs = z
  .number()
  .min(0)
  .max(24 * 3_600_000);
const atMs = timeMs.describe('A time within the repetition that is meant.');

/**
 * What one correction changes; it names repetitions by a time in them, so that it stays valid when they are
 * renumbered.
 */
const changeSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('exclude'), atMs, reason: z.string().min(1).max(longestReason) }),
  z.strictObject({ kind: z.literal('include'), atMs }),
  z.strictObject({ kind: z.literal('split'), atMs: timeMs.describe('Where the second part begins.') }),
  z.strictObject({ kind: z.literal('join'), atMs, withMs: timeMs.describe('A time within the other one.') }),
  z.strictObject({
    kind: z.literal('move-edge'),
    atMs,
    edge: z.enum(['start', 'end']).describe('Of the loaded time.'),
    toMs: timeMs,
  }),
  z.strictObject({
    kind: z.literal('move-point'),
    timeMs: timeMs.describe('Of the frame.'),
    point: z.enum(keypointNames).describe('As the network named it, in the picture as it was recorded.'),
    xNorm: z.number().min(0).max(1).describe('Share of the picture’s width from its left, as recorded.'),
    yNorm: z.number().min(0).max(1).describe('Share of the picture’s height from its top.'),
  }),
  z.strictObject({ kind: z.literal('working-side'), side: z.enum(sides) }),
  z.strictObject({ kind: z.literal('mirrored'), isMirrored: z.boolean() }),
]) satisfies z.ZodType<CorrectionChange>;

/** A change with who made it, and when. */
export const correctionSchema = z.strictObject({
  change: changeSchema,
  by: z.string().max(longestName).describe('Initials or a role; empty where none was given.'),
  at: z.iso.datetime(),
}) satisfies z.ZodType<Correction>;

/** More than anybody makes by hand. */
export const mostCorrections = 2000;
