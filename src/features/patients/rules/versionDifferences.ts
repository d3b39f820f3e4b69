import { doseWords } from '#documents/plan/itemFacts';
import { itemName } from '#documents/plan/itemName';
import type { PlanDocument } from '#documents/plan/planDocument';
import type { SessionDocument } from '#documents/session/sessionDocument';
import { dateInWords, dayWords } from '#words/dateWords';

/** What is said of a document: names with values in words. */
type Facts = readonly (readonly [name: string, value: string])[];

/** In what two versions of a session differ, a sentence each; none where they are the same. */
export function sessionDifferences(other: SessionDocument, counts: SessionDocument): string[] {
  return differences(sessionFacts(other), sessionFacts(counts), isSame(other, counts));
}

/** The same of two versions of a plan. */
export function planDifferences(other: PlanDocument, counts: PlanDocument): string[] {
  return differences(planFacts(other), planFacts(counts), isSame(other, counts));
}

function isSame(one: unknown, other: unknown): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}

function differences(other: Facts, counts: Facts, areSame: boolean): string[] {
  if (areSame) return [];
  const inCounts = new Map(counts);
  const found = other.flatMap(([name, value]) => {
    const counting = inCounts.get(name) ?? 'nothing';
    return value === counting ? [] : [`${name}: ${value}; the one that counts: ${counting}.`];
  });
  const names = new Set(other.map(([name]) => name));
  const onlyCounting = counts
    .filter(([name]) => !names.has(name))
    .map(([name, value]) => `${name}: nothing; the one that counts: ${value}.`);
  const all = [...found, ...onlyCounting];
  return all.length > 0 ? all : ['They differ in details that are not listed here.'];
}

function sessionFacts({ painBefore, painAfter, effort, remark, sets, settles }: SessionDocument): Facts {
  return [
    ['Pain before', scoreWords(painBefore)],
    ['Pain after', scoreWords(painAfter)],
    ['Effort', scoreWords(effort)],
    ['Remark', remark === '' ? 'none' : `“${remark}”`],
    ['Sets', String(sets.length)],
    ['Settled', settles.map(({ who, at }) => `${who} on ${dayWords(at)}`).join(', ') || 'by nobody'],
  ];
}

function planFacts({ perWeek, painLimit, reviewDate, items }: PlanDocument): Facts {
  return [
    ['Times a week', String(perWeek ?? 'not said')],
    ['Pain limit', String(painLimit)],
    ['Looked at again on', reviewDate === null ? 'not said' : dateInWords(reviewDate)],
    ...items.map((item, index) => [`${index + 1}. ${itemName(item)}`, doseWords(item)] as const),
  ];
}

function scoreWords(score: number | null): string {
  return score === null ? 'not said' : `${score} of 10`;
}
