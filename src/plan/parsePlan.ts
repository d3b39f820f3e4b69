import { planSchema, planVersion, type PlanDocument } from './planDocument';
import { PlanProblem } from './planProblem';
import { largestPlanBytes } from './planRanges';
import { limitsSentence, planSentence, rangeSentence } from './senseSentence';

const chooseAnother = 'Choose the plan file that you were given.';
/** Longest part of a message that may quote the file, characters. */
const longestQuote = 200;
const askForAnother = 'Ask whoever made the plan for a corrected one.';

/**
 * Reads a plan from text that may be anything.
 *
 * @throws PlanProblem  with a sentence that says what is wrong and what to do
 */
export function parsePlan(text: string): PlanDocument {
  if (text.length > largestPlanBytes)
    throw new PlanProblem(`This file is too large for a plan. ${chooseAnother}`);
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    throw new PlanProblem(`This is not a plan: it is not JSON. ${chooseAnother}`);
  }
  const fields = fieldsOf(data);
  checkVersion(fields);
  const result = planSchema.safeParse(data);
  const fault = result.success ? planSentence(result.data) : limitsSentence(fields.items);
  if (fault !== null) throw new PlanProblem(`This plan makes no sense: ${fault}. ${askForAnother}`);
  if (result.success) return result.data;
  const { path = [], code, message = 'unknown' } = result.error.issues[0] ?? {};
  const outOfRange = code === 'too_small' || code === 'too_big' || code === 'invalid_type';
  const sense = outOfRange ? rangeSentence(path, valueAt(data, path)) : null;
  if (sense !== null) throw new PlanProblem(`This plan makes no sense: ${sense}. ${askForAnother}`);
  const where = path.length === 0 ? 'the document' : `"${path.join('.')}"`;
  throw new PlanProblem(
    `This plan is damaged at ${where} (${message.slice(0, longestQuote)}). ${askForAnother}`,
  );
}

function checkVersion({ format, version }: Record<string, unknown>): void {
  if (format !== 'overfoot-plan') throw new PlanProblem(`This is not a plan. ${chooseAnother}`);
  if (typeof version === 'number' && version > planVersion) {
    throw new PlanProblem(
      `This plan is of version ${version}; this program reads up to ${planVersion}. Update the program.`,
    );
  }
}

function fieldsOf(data: unknown): Record<string, unknown> {
  return (typeof data === 'object' && data !== null ? data : {}) as Record<string, unknown>;
}

function valueAt(data: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>((at, key) => fieldsOf(at)[String(key)], data);
}
