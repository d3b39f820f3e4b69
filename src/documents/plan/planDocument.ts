import { wornFootwear } from '#core/conditions/setConditions';
import { holdIds, taskIds } from '#core/exercises/exercises';
import { autoSteps } from '#core/programme/nextStep';
import { thresholdFacts, thresholdIds, type OwnThresholds } from '#core/programme/proposalThresholds';
import { feedbackModes } from '#core/protocol/feedback';
import { sides } from '#core/protocol/side';
import { supports } from '#core/protocol/support';
import { languages } from '#words/messages/languages';
import { videoParts } from '../parcel/videoPart';
import { limitsSchema } from '../schema/limitsSchema';
import { loadSchema } from '../schema/loadSchema';
import { publicKeySchema } from '../schema/publicKeySchema';
import { z } from '../schema/zod';
import { planBounds, planRanges } from './planRanges';

/** Bumped when a field is added, removed or changes its meaning; older versions are migrated on reading. */
export const planVersion = 9;

export const footwearChoices = [...wornFootwear, 'either'] as const;
export type Footwear = (typeof footwearChoices)[number];

const whole = ({ min, max }: { min: number; max: number }) => z.int().min(min).max(max);
const within = ({ min, max }: { min: number; max: number }) => z.number().min(min).max(max);

const dose = {
  sides: z
    .array(z.enum(sides))
    .min(1)
    .max(sides.length)
    .describe("The person's own sides, in the order in which they work; all sets of one, then the other."),
  sets: whole(planRanges.sets).describe('For each side.'),
  restSeconds: whole(planRanges.restSeconds).describe('After each set, and between the holds of a set.'),
};

/** What version 7 added to every item. */
const progress = {
  stage: z
    .string()
    .min(1)
    .max(planBounds.stage)
    .nullable()
    .describe("The id of one of the exercise's stages; null: none, and so is one that is not known."),
  load: loadSchema.nullable().describe('Null: nothing is said of it.'),
  support: z.enum(supports).nullable().describe('How much is held on to; null: nothing is said of it.'),
  bendDeg: within(planRanges.bendDeg)
    .nullable()
    .describe('About how far the working knee bends, degrees from straight; an aim, not a limit.'),
  sidesInTurn: z
    .boolean()
    .describe('With both sides: a set of one, then of the other, so that a leg rests while the other works.'),
  perWeek: whole(planRanges.perWeek)
    .nullable()
    .describe('On how many occasions a week, where that differs from the plan; null: as the plan.'),
};

const repetitionItem = z.strictObject({
  kind: z.literal('repetitions'),
  task: z.enum(taskIds),
  ...dose,
  repetitions: whole(planRanges.repetitions).describe('In each set.'),
  tempo: z
    .strictObject({
      downSeconds: within(planRanges.downSeconds),
      pauseSeconds: within(planRanges.pauseSeconds),
      upSeconds: within(planRanges.upSeconds),
    })
    .nullable()
    .describe(
      'Down, stay at the turning point, up; where the leg reaches out, out and back. Null: as it comes.',
    ),
  seatHeightCm: within(planRanges.seatHeightCm).nullable().describe('Only for tasks with a seat.'),
  feedback: z.enum(feedbackModes),
  limits: limitsSchema,
  ...progress,
  stepHeightCm: within(planRanges.stepHeightCm).nullable().describe('Only for tasks with a step.'),
  upTo: z
    .strictObject({ min: whole(planRanges.upTo), max: whole(planRanges.upTo) })
    .nullable()
    .describe(
      'Repetitions of a set that come before the next stage, and those that it never goes beyond; null: as the stage says.',
    ),
});

const holdItem = z.strictObject({
  kind: z.literal('hold'),
  task: z.enum(holdIds),
  ...dose,
  holds: whole(planRanges.holds).describe('In each set.'),
  holdSeconds: whole(planRanges.holdSeconds),
  ...progress,
});

/** Something to do that the library does not know; nothing of it is timed or measured. */
const freeItem = z.strictObject({
  name: z.string().min(1).max(planBounds.freeName),
  how: z.string().max(planBounds.freeHow),
  dose: z.string().max(planBounds.freeDose).describe('How much, in words.'),
});

/** Each threshold within its own range; none where all are as usual. */
const ownThresholds = z.strictObject(
  Object.fromEntries(
    thresholdIds.map((id) => {
      const { isWhole, ...range } = thresholdFacts[id];
      return [id, (isWhole ? whole(range) : within(range)).optional()];
    }),
  ),
) as unknown as z.ZodType<OwnThresholds>;

/** What is to be done at home, as the treating professional wrote it. */
export const planSchema = z
  .strictObject({
    format: z.literal('overfoot-plan'),
    version: z.literal(planVersion),
    id: z.uuid(),
    createdAt: z.iso.datetime(),
    note: z.string().max(planBounds.note).describe('For demo data: that it is invented. Otherwise empty.'),
    patient: z.string().min(1).max(planBounds.patient).describe('A pseudonym, never a name.'),
    items: z
      .array(z.discriminatedUnion('kind', [repetitionItem, holdItem]))
      .min(1)
      .max(planBounds.items)
      .describe('In the order in which they are done.'),
    footwear: z.enum(footwearChoices),
    painLimit: whole(planRanges.painLimit).describe('Pain above this, 0 to 10, means stop.'),
    usualPain: whole(planRanges.usualPain)
      .nullable()
      .describe('How much it usually hurts, 0 to 10: more than 2 above it means stop, too. Null: not known.'),
    mayGoOnAbove: z
      .boolean()
      .describe(
        'Whether the patient may go on above the limit, below 7 and no more than 2 above the usual pain.',
      ),
    beyondPainLimit: z.string().min(1).max(planBounds.beyondPainLimit).describe('What to do then.'),
    ifItGivesWay: z
      .string()
      .max(planBounds.ifItGivesWay)
      .describe(
        'What to do after the knee gave way, locked or got stuck; empty: contact a professional first.',
      ),
    howOften: z.string().max(planBounds.howOften),
    perWeek: whole(planRanges.perWeek)
      .nullable()
      .describe('On how many occasions a week all of it is done; null where that is left open.'),
    reviewDate: z.iso.date().nullable(),
    words: z.string().max(planBounds.words).describe("The therapist's own words to the patient."),
    videoWish: z
      .enum(videoParts)
      .nullable()
      .describe(
        'How much of the video the therapist would like to be sent; the patient decides. Null: no wish.',
      ),
    returnKeys: z
      .array(publicKeySchema)
      .max(planBounds.returnKeys)
      .describe(
        "Public keys in the age format, the therapist's own first, then colleagues': what goes back is sealed for " +
          'all of them, and any one opens it. Empty: nothing goes back.',
      ),
    language: z
      .enum(languages)
      .describe(
        'What the patient reads and hears everything in but the words of this plan; they may change it.',
      ),
    freeItems: z
      .array(freeItem)
      .max(planBounds.freeItems)
      .describe('Done in addition to the items, without the camera, and ticked off.'),
    autoStep: z
      .enum(autoSteps)
      .describe(
        "How far the patient's device changes the plan by itself: not at all; it proposes; or within a stage " +
          "(more repetitions, up to the item's `upTo`, or the same after a day of rest), saying so.",
      ),
    thresholds: ownThresholds.describe(
      'Where the rules for that draw their lines, where that is not as usual; none, unless `autoStep` is within-plan.',
    ),
  })
  .meta({ title: 'Overfoot plan' });

export type PlanDocument = z.infer<typeof planSchema>;
export type PlanItem = PlanDocument['items'][number];
export type RepetitionItem = z.infer<typeof repetitionItem>;
export type HoldItem = z.infer<typeof holdItem>;
export type FreeItem = PlanDocument['freeItems'][number];
export type Tempo = NonNullable<RepetitionItem['tempo']>;
