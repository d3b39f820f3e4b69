import { longestCaseText, mostInEntry } from '../patient/caseEntries';
import { z } from '../schema/zod';

/** Largest file that is read, bytes. */
export const largestQuestionnaireBytes = 300_000;
/** Most answers to choose from. */
export const mostOptions = 60;

const option = z.strictObject({
  system: z.string().max(longestCaseText.url).nullable(),
  code: z.string().min(1).max(longestCaseText.code),
  display: z.string().max(longestCaseText.question),
  points: z.number().nullable().describe('What the answer counts, as its definition says.'),
});

/** A question of an imported questionnaire, in the order in which it is asked. */
export const questionSchema = z.strictObject({
  linkId: z.string().min(1).max(longestCaseText.code),
  heading: z.string().max(longestCaseText.question).describe('What stands before it; empty: nothing.'),
  asks: z.string().max(longestCaseText.question),
  kind: z.enum(['choice', 'yes-no', 'number', 'whole', 'text', 'date']),
  options: z.array(option).max(mostOptions).describe('Of a choice alone.'),
});

/** A questionnaire that a practice imported, as it is shown. Its words belong to its owner. */
export const questionnaireDefinitionSchema = z.strictObject({
  url: z.string().min(1).max(longestCaseText.url),
  version: z.string().max(longestCaseText.code).nullable(),
  title: z.string().min(1).max(longestCaseText.title),
  copyright: z.string().max(2000),
  questions: z.array(questionSchema).min(1).max(mostInEntry.questions),
});

export type Question = z.infer<typeof questionSchema>;
export type QuestionnaireDefinition = z.infer<typeof questionnaireDefinitionSchema>;
