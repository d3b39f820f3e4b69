import { whereDamaged } from '../reading/bySchema';
import { planSchema, type PlanDocument } from './planDocument';
import { afterThePlan, limitsSentence, planSentence, rangeSentence } from './senseSentence';

/** A plan, or what makes no sense or is damaged about it; half a sentence each. */
export type ReadPlan = { plan: PlanDocument } | { senseless: string } | { damaged: string };

/** Checks data of this version that may be anything else. */
export function readPlan(data: unknown, naming = afterThePlan): ReadPlan {
  const result = planSchema.safeParse(data);
  const fault =
    limitsSentence(at(data, ['items'])) ?? (result.success ? planSentence(result.data, naming) : null);
  if (fault !== null) return { senseless: fault };
  if (result.success) return { plan: result.data };
  const { path = [], code } = result.error.issues[0] ?? {};
  const outOfRange = code === 'too_small' || code === 'too_big' || code === 'invalid_type';
  const sense = outOfRange ? rangeSentence(path, at(data, path), naming) : null;
  if (sense !== null) return { senseless: sense };
  return { damaged: whereDamaged(result.error) };
}

function at(data: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, key) =>
      typeof value === 'object' && value !== null ? (value as Record<PropertyKey, unknown>)[key] : undefined,
    data,
  );
}
