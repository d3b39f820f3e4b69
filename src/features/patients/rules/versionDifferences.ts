import { notIn, type CountingReview } from '#documents/patient/otherReview';
import { doseWords } from '#documents/plan/itemFacts';
import { itemName } from '#documents/plan/itemName';
import type { PlanDocument } from '#documents/plan/planDocument';
import type { SessionDocument } from '#documents/session/sessionDocument';
import { versionText, withSettlements } from '#documents/session/sessionVersions';
import { correctionSentence } from '#words/correctionWords';
import { dateInWords, dayWords } from '#words/dateWords';
import { formatTime } from '#words/formatTime';

/** What is said of a document: names with values in words. */
type Facts = readonly (readonly [name: string, value: string])[];

/** In what two versions of a session differ, a sentence each; none where they are the same. */
export function sessionDifferences(other: SessionDocument, counts: SessionDocument): string[] {
  const isSettledToo = withSettlements(counts, other) === counts;
  if (isSettledToo && versionText(other) === versionText(counts)) return [];
  const factsOf = (session: SessionDocument) =>
    isSettledToo ? sessionFacts(session) : [...sessionFacts(session), settledFact(session)];
  return differences(factsOf(other), factsOf(counts));
}

/** The same of two versions of a plan. */
export function planDifferences(other: PlanDocument, counts: PlanDocument): string[] {
  if (JSON.stringify(other) === JSON.stringify(counts)) return [];
  return differences(planFacts(other), planFacts(counts));
}

/** The same of two reviews of a set: none where the one that counts has all corrections and cues of the other. */
export function reviewDifferences(other: CountingReview, counts: CountingReview): string[] {
  const left = onlyIn(other, counts).map((what) => `Left out: ${what}`);
  if (left.length === 0) return [];
  const counting = onlyIn(counts, other).map((what) => `Only in the one that counts: ${what}`);
  return [...new Set([...left, ...counting])]; // Two joints placed by hand at one time read the same.
}

/** What one review has and the other has not, each with who made it. */
function onlyIn(one: CountingReview, other: CountingReview): string[] {
  return [
    ...notIn(one.corrections, other.corrections).map(
      ({ change, by }) => `${correctionSentence(change)}${by === '' ? '' : ` (${by})`}`,
    ),
    ...notIn(one.cues, other.cues).map(({ atMs, text }) => `Cue at ${formatTime(atMs)}: “${text}”`),
  ];
}

function differences(other: Facts, counts: Facts): string[] {
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

function sessionFacts({ painBefore, painAfter, effort, remark, sets }: SessionDocument): Facts {
  return [
    ['Pain before', scoreWords(painBefore)],
    ['Pain after', scoreWords(painAfter)],
    ['Effort', scoreWords(effort)],
    ['Remark', remark === '' ? 'none' : `“${remark}”`],
    ['Sets', String(sets.length)],
  ];
}

/** Said only of versions that were kept before what was settled in either counted from both. */
function settledFact({ settles }: SessionDocument): Facts[number] {
  return ['Settled', settles.map(({ who, at }) => `${who} on ${dayWords(at)}`).join(', ') || 'by nobody'];
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
