import type { Verdict } from '#core/scoring/verdict';

/** Verdicts as shown on screens and in tables. */
export const verdictWords: Record<Verdict, string> = {
  'in-line': 'in line',
  'near-limit': 'near the limit',
  'out-of-line': 'out of line',
  'not-measured': 'not measured',
};
