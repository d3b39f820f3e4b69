import { planSchema, type PlanDocument } from './planDocument';
import { limitsSentence, planSentence, rangeSentence } from './senseSentence';

/** A plan, or what makes no sense or is damaged about it; half a sentence each. */
export type ReadPlan = { plan: PlanDocument } | { senseless: string } | { damaged: string };

/** Longest part of a message that may quote the data, characters. */
const longestQuote = 200;

/** Checks data of this version that may be anything else. */
export function readPlan(data: unknown): ReadPlan {
  const result = planSchema.safeParse(data);
  const fault = result.success ? planSentence(result.data) : limitsSentence(at(data, ['items']));
  if (fault !== null) return { senseless: fault };
  if (result.success) return { plan: result.data };
  const { path = [], code, message = 'unknown' } = result.error.issues[0] ?? {};
  const outOfRange = code === 'too_small' || code === 'too_big' || code === 'invalid_type';
  const sense = outOfRange ? rangeSentence(path, at(data, path)) : null;
  if (sense !== null) return { senseless: sense };
  const where = path.length === 0 ? 'the document' : `"${path.join('.')}"`;
  return { damaged: `${where} (${message.slice(0, longestQuote)})` };
}

function at(data: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, key) =>
      typeof value === 'object' && value !== null ? (value as Record<PropertyKey, unknown>)[key] : undefined,
    data,
  );
}
