import { mean } from 'd3-array';
import type { ScoreFacts } from './builtIn';

/** How an imported questionnaire is scored: published, and free to use in care. */
export interface ScoreRule extends ScoreFacts {
  id: string;
  /** From the best to the worst, or the other way: what a score means. */
  words: string;
  /** How many questions it has. */
  questions: number;
  /** Points of one answer. */
  least: number;
  most: number;
  /** Answers that are needed. */
  needed: number;
  source: string;
  /** @param points  of the questions that were answered */
  score: (points: readonly number[]) => number;
}

const rules: readonly ScoreRule[] = [
  {
    id: 'koos-pf',
    words: '0 (extreme problems) to 100 (none)',
    questions: 11,
    least: 0,
    most: 4,
    needed: 6,
    source: 'Crossley 2018, Br J Sports Med 52:1130; its developers let it be used in care',
    detectable: { points: 16, source: 'for one person (Crossley 2018)' },
    important: { points: 16.4, source: 'Crossley 2018' },
    score: (points) => 100 - 25 * mean(points)!,
  },
];

/**
 * The rule for a definition, by the last part of its canonical url, since its owners publish no url of their own; null
 * where none is known.
 */
export function findScoreRule(url: string): ScoreRule | null {
  const last = url.replace(/\|.*$/, '').split(/[/:#]/).filter(Boolean).at(-1)?.toLowerCase();
  return rules.find(({ id }) => id === last) ?? null;
}

/** Why there is no score. */
export type ScoreFault = 'no-rule' | 'other-questions' | 'other-points' | 'too-few';

/**
 * A questionnaire's score by its rule.
 *
 * @param points  one for each question; null where it was not answered, or where its answer counts nothing
 */
export function scoreByRule(
  rule: ScoreRule | null,
  points: readonly (number | null)[],
): { score: number; fault: null } | { score: null; fault: ScoreFault } {
  const none = (fault: ScoreFault) => ({ score: null, fault });
  if (rule === null) return none('no-rule');
  if (points.length !== rule.questions) return none('other-questions');
  const given = points.filter((one) => one !== null);
  if (given.some((one) => !Number.isInteger(one) || one < rule.least || one > rule.most))
    return none('other-points');
  if (given.length < rule.needed) return none('too-few');
  return { score: rule.score(given), fault: null };
}
