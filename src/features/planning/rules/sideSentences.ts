import type { PainfulSide } from '#documents/patient/patientDocument';
import { itemName } from '#documents/plan/itemName';
import type { PlanItem } from '#documents/plan/planDocument';

/**
 * What to look at again about the sides of a plan, for the therapist: tasks that are for different legs, and tasks
 * that leave the painful one out. Nothing of what is chosen on purpose is refused.
 *
 * @param painful  as the patient's record says; null where nothing is noted
 */
export function sideSentences(items: readonly PlanItem[], painful: PainfulSide | null): string[] {
  const sentences: string[] = [];
  const named = items.map((item, i) => ({ item, name: `${i + 1} (${itemName(item)})` }));
  const only = (side: 'left' | 'right') =>
    named.filter(({ item: { sides } }) => sides.length === 1 && sides[0] === side).map(({ name }) => name);
  const [left, right] = [only('left'), only('right')];
  if (left.length > 0 && right.length > 0)
    sentences.push(
      `The tasks are for different legs: left alone in ${listed(left)}, right alone in ${listed(right)}.`,
    );
  if (painful !== 'left' && painful !== 'right') return sentences;
  const without = painful === 'left' ? right : left;
  if (without.length > 0)
    sentences.push(`The ${painful} knee is noted as the painful one; without it: ${listed(without)}.`);
  return sentences;
}

function listed(names: readonly string[]): string {
  return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}
