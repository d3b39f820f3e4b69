import { sum } from 'd3-array';

export interface Kappa {
  /** Things that were rated. */
  count: number;
  /** Share rated alike. */
  agreement: number;
  /** Share that chance alone would rate alike, with as many in each class. */
  chance: number;
  kappa: number;
  /** Where classes are in order: near misses count in part, by their distance or its square. */
  linear: number;
  quadratic: number;
  /** Large-sample standard error of kappa, and its 95 % confidence interval, cut at -1 and 1. */
  standardError: number;
  low: number;
  high: number;
}

/**
 * Agreement of two ratings of the same things beyond chance: (agreement - chance) / (1 - chance).
 *
 * @param table  counts: a row for each class of the first rating, a column for each of the second, in the same order
 * @returns  1 = rated alike, 0 = as by chance
 * Missing: null where chance alone agrees in all: one class was used throughout
 * @throws  RangeError where the table is not square, smaller than 2 x 2, empty, or has a count that is not 0 or above
 * Source:  Cohen 1960, Educ Psychol Meas 20:37, with his standard error sqrt(p (1 - p) / n) / (1 - chance); weighted:
 *   Cohen 1968, Psychol Bull 70:213
 */
export function kappa(table: readonly (readonly number[])[]): Kappa | null {
  requireTable(table);
  const count = sum(table.flat());
  const rows = table.map((row) => sum(row) / count);
  const columns = table.map((_, column) => sum(table, (row) => row[column]) / count);
  /** Observed and chance agreement, where a pair of classes agrees in part. */
  const agreements = (share: (row: number, column: number) => number) => ({
    observed: sum(table.flatMap((row, i) => row.map((cell, j) => (share(i, j) * cell) / count))),
    chance: sum(rows.flatMap((row, i) => columns.map((column, j) => share(i, j) * row * column))),
  });
  const beyondChance = ({ observed, chance }: ReturnType<typeof agreements>) =>
    (observed - chance) / (1 - chance);
  const farthest = table.length - 1;
  const plain = agreements((i, j) => Number(i === j));
  if (1 - plain.chance < 1e-12) return null;
  const value = beyondChance(plain);
  const { observed, chance } = plain;
  const standardError = Math.sqrt((observed * (1 - observed)) / count) / (1 - chance);
  return {
    count,
    agreement: observed,
    chance,
    kappa: value,
    linear: beyondChance(agreements((i, j) => 1 - Math.abs(i - j) / farthest)),
    quadratic: beyondChance(agreements((i, j) => 1 - ((i - j) / farthest) ** 2)),
    standardError,
    low: Math.max(-1, value - 1.96 * standardError),
    high: Math.min(1, value + 1.96 * standardError),
  };
}

function requireTable(table: readonly (readonly number[])[]): void {
  if (table.length < 2 || table.some((row) => row.length !== table.length))
    throw new RangeError(
      `A table of ratings is square, 2 x 2 or more, got rows of ${table.map((row) => row.length).join(', ')}.`,
    );
  const wrong = table.flat().find((cell) => !(cell >= 0 && cell < Infinity));
  if (wrong !== undefined) throw new RangeError(`Counts are 0 or above, got ${wrong}.`);
  if (sum(table.flat()) === 0)
    throw new RangeError('A table of ratings needs at least one thing that was rated.');
}
