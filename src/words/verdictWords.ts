import type { Verdict } from '#core/scoring/verdict';

/** Verdicts as shown on screens and in tables. */
export const verdictWords: Record<Verdict, string> = {
  in: 'in line',
  'probably-in': 'probably in line',
  'cant-tell': 'can’t tell',
  'probably-out': 'probably out of line',
  out: 'out of line',
  'not-measured': 'not measured',
};
