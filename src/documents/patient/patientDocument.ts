import { sides } from '#core/protocol/side';
import { planBounds, planRanges } from '../plan/planRanges';
import { z } from '../schema/zod';
import { longestText } from '../session/sessionDocument';

/** Bumped when a field is added, removed or changes its meaning; older versions are migrated on reading. */
export const patientVersion = 1;

/** Longest texts, characters; the forms enforce the same. */
export const longestPatientText = { pseudonym: longestText.patient, goals: 1000, restrictions: 1000 };

const mostPlans = 1000;
const mostMarks = 10_000;

/** Where it hurts, as the patient points to it. */
export const painSites = ['front', 'outer', 'inner', 'behind', 'elsewhere'] as const;
export type PainSite = (typeof painSites)[number];

export const painfulSides = [...sides, 'both'] as const;
export type PainfulSide = (typeof painfulSides)[number];

/** How far somebody got with a session: it was opened, or nothing in it is left to do. */
export const markStates = ['viewed', 'settled'] as const;

/** What a practice keeps of a patient beside the sessions. It stays with the practice. */
export const patientSchema = z
  .strictObject({
    format: z.literal('overfoot-patient'),
    version: z.literal(patientVersion),
    id: z.uuid(),
    note: z.string().max(2000).describe('For demo data: that it is invented. Otherwise empty.'),
    pseudonym: z.string().min(1).max(longestPatientText.pseudonym).describe('Never a name.'),
    openedAt: z.iso.datetime().describe('When the record was made.'),
    changedAt: z.iso.datetime().describe('When somebody last changed what is noted below, up to `plans`.'),
    painfulSide: z.enum(painfulSides).nullable().describe('Null: not noted.'),
    since: z.iso.date().nullable().describe('Since when it hurts; null: not noted.'),
    sites: z.array(z.enum(painSites)).max(painSites.length),
    goals: z.string().max(longestPatientText.goals),
    painRule: z
      .strictObject({
        limit: z.int().min(planRanges.painLimit.min).max(planRanges.painLimit.max),
        then: z.string().max(planBounds.beyondPainLimit).describe('What was agreed to do above it.'),
      })
      .nullable()
      .describe('What was agreed about pain, 0 to 10; null: not noted.'),
    restrictions: z.string().max(longestPatientText.restrictions),
    plans: z
      .array(z.strictObject({ id: z.uuid(), givenAt: z.iso.datetime() }))
      .max(mostPlans)
      .describe('Plans that were given, the latest last.'),
    marks: z
      .array(z.strictObject({ visitId: z.uuid(), state: z.enum(markStates), at: z.iso.datetime() }))
      .max(mostMarks)
      .describe('Sessions that were looked at, one entry each; others are new.'),
  })
  .meta({ title: 'Overfoot patient document' });

export type PatientDocument = z.infer<typeof patientSchema>;
export type SessionMark = PatientDocument['marks'][number];
/** What somebody notes of a patient. */
export type PatientNotes = Pick<
  PatientDocument,
  'painfulSide' | 'since' | 'sites' | 'goals' | 'painRule' | 'restrictions'
>;
