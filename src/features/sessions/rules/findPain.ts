import type { PainMoment } from '#documents/plan/cautions';
import type { Finding } from './finding';
import type { ListedSession } from './listedSession';

interface PainScore {
  score: number;
  when: PainMoment;
}

/**
 * Pain that rose by less says nothing: the least change that can be detected is 1.33 (numeric scale, knee
 * osteoarthritis, n = 121, J Pain Res 2018, PMC5927184).
 */
const leastRise = 2;

/** The highest pain where it is above the limit, and the highest rise from before, from 2 on. */
export function findPain({
  painBefore,
  painAfter,
  painLimit,
  sets,
}: Pick<ListedSession, 'painBefore' | 'painAfter' | 'painLimit' | 'sets'>): Finding[] {
  const scores = [
    { score: painBefore, when: 'before' as const },
    ...sets.map(({ line }) => ({ score: line.painDuring, when: 'during' as const })),
    { score: painAfter, when: 'after' as const },
  ].flatMap(({ score, when }) => (score === null ? [] : [{ score, when }]));
  const findings: Finding[] = [];
  const highest = highestOf(scores);
  if (painLimit !== null && highest !== null && highest.score > painLimit) {
    findings.push({ kind: 'pain-above-limit', ...highest, limit: painLimit });
  }
  const later = highestOf(scores.filter(({ when }) => when !== 'before'));
  if (
    painBefore !== null &&
    later !== null &&
    later.when !== 'before' &&
    later.score - painBefore >= leastRise
  ) {
    findings.push({ kind: 'pain-risen', from: painBefore, to: later.score, when: later.when });
  }
  return findings;
}

/** The first of the highest; null where no score was given. */
function highestOf(scores: readonly PainScore[]): PainScore | null {
  return scores.reduce<PainScore | null>(
    (most, one) => (most === null || one.score > most.score ? one : most),
    null,
  );
}
