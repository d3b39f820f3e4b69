export const grades = ['out', 'probably-out', 'cant-tell', 'probably-in', 'in'] as const;
/** What can be said of a repetition, from surely beyond a limit to surely in line. */
export type Grade = (typeof grades)[number];

export const surenesses = [0.8, 0.9, 0.95] as const;
/** How sure it has to be before a repetition is said to be on one side of its limits. */
export type Sureness = (typeof surenesses)[number];

/** What practices use until they choose another. Common practice, no source. */
export const usualSureness: Sureness = 0.8;

/** From this chance on a side is named without 'probably': a quarter of the doubt that the sureness allows is left. */
const firmFrom: Record<Sureness, number> = { 0.8: 0.95, 0.9: 0.975, 0.95: 0.9875 };

/**
 * What can be said of a repetition.
 *
 * A side is named only where its chance reaches the sureness; where neither side does, the grade is 'can't tell'. So a
 * repetition that is 'probably' on one side is decided too: the word says that more doubt is left than in a firm grade,
 * never that it is less sure than was asked for.
 *
 * @param chanceInLine  0 to 1; the chance that it was beyond a limit is 1 less it
 * @throws  RangeError where the chance is not from 0 to 1
 * Source:  0.8 and 0.95 are common practice, no source; 0.95 on one side is where a 90 % error band clears its limit
 */
export function gradeOf(chanceInLine: number, sureness: Sureness): Grade {
  if (!(chanceInLine >= 0 && chanceInLine <= 1))
    throw new RangeError(`A chance is from 0 to 1, got ${chanceInLine}.`);
  const beyond = 1 - chanceInLine;
  if (beyond >= firmFrom[sureness]) return 'out';
  if (beyond >= sureness) return 'probably-out';
  if (chanceInLine >= firmFrom[sureness]) return 'in';
  return chanceInLine >= sureness ? 'probably-in' : 'cant-tell';
}

/**
 * The side that a grade names; null where it names none, which alone is undecided. A decided grade is right where the
 * truth lies on its side.
 */
export function sideOf(grade: Grade): 'in' | 'out' | null {
  if (grade === 'cant-tell') return null;
  return grade === 'in' || grade === 'probably-in' ? 'in' : 'out';
}
