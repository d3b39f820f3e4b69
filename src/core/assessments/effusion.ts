import type { Swelling } from '../programme/stageCourse';

/** Grades of the stroke test, from none to most. */
export const effusionGrades = ['0', 'trace', '1+', '2+', '3+'] as const;
export type EffusionGrade = (typeof effusionGrades)[number];

/**
 * What two examinations mean to the rules of a programme: one grade more is more, two are much more, and so is any rise
 * to 2+ or 3+.
 *
 * Source: our choice after the effusion guideline in PMC6044585 (after Adams 2012), by which an effusion of 2+ holds
 */
export function swellingOf(earlier: EffusionGrade, later: EffusionGrade): Swelling {
  const [then, now] = [effusionGrades.indexOf(earlier), effusionGrades.indexOf(later)];
  if (now < then) return 'less';
  if (now === then) return 'same';
  return now - then > 1 || now >= effusionGrades.indexOf('2+') ? 'much-more' : 'more';
}
