/** A question that is answered with 0 to 10. */
export interface ScaleQuestion {
  question: string;
  /** What 0 and 10 mean. */
  lowest: string;
  highest: string;
}

const ends = { lowest: 'no pain', highest: 'the worst pain you can think of' };

/** How pain and effort are asked. The 0 to 10 scale of pain is common practice; so is its wording. */
export const scaleQuestions = {
  painBefore: { question: 'How much does your knee hurt right now?', ...ends },
  painDuring: { question: 'How much did your knee hurt during this set, at its most?', ...ends },
  painAfter: { question: 'How much does your knee hurt now, afterwards?', ...ends },
  effort: { question: 'How hard was it?', lowest: 'no effort at all', highest: 'as hard as I can' },
} as const satisfies Record<string, ScaleQuestion>;

/**
 * A pain score in words; the steps are common practice, no source.
 *
 * @param score  0 to 10
 */
export function painWords(score: number): string {
  if (score <= 0) return 'no pain';
  if (score <= 3) return 'a little pain';
  if (score <= 6) return 'some pain';
  return score < 10 ? 'strong pain' : ends.highest;
}

/**
 * An effort in words; the steps are common practice, no source.
 *
 * @param score  0 to 10
 */
export function effortWords(score: number): string {
  if (score <= 0) return scaleQuestions.effort.lowest;
  if (score <= 3) return 'light';
  if (score <= 6) return 'medium';
  return score < 10 ? 'hard' : scaleQuestions.effort.highest;
}

/**
 * From this pain on, 0 to 10, exercising is always advised against, whatever a plan allows: a plan may have been
 * changed on its way. Strong pain begins there; common practice, no source.
 */
export const strongPainFrom = 7;

/**
 * Pain may be as much above the usual one. Our own choice, no source; more than the least change that can be
 * detected, 1.33 (numeric scale, knee osteoarthritis, n = 121, J Pain Res 2018, PMC5927184).
 */
export const mostAboveUsual = 2;
