import { mean, sum } from 'd3-array';
import { fQuantile } from './fQuantile';
import { requireFinite } from './requireFinite';

/** Mean squares of a table of ratings: rows are the targets, columns the judges. */
export interface MeanSquares {
  rows: number;
  columns: number;
  /** Between rows ('between targets'). */
  between: number;
  /** Within rows, across all judges. */
  within: number;
  /** Between columns ('between judges'). */
  judges: number;
  /** Residual: explained by neither row nor column. */
  residual: number;
}

/** Each form separately, since one may be missing where another is not. */
export interface IntraclassCorrelation {
  /** ICC(1,1): each row was rated by different judges. */
  oneWay: number | null;
  /** ICC(2,1): the judges represent any others; absolute agreement. */
  agreement: number | null;
  /** ICC(3,1): these judges only; consistency. */
  consistency: number | null;
  /** 95 % confidence intervals of the last two; null where rows or residual do not differ, or the approximation fails. */
  agreementInterval: { low: number; high: number } | null;
  consistencyInterval: { low: number; high: number } | null;
}

/**
 * Two-way analysis of variance of a full table, without replication.
 *
 * @param ratings  one row a person (or repetition), one column a judge (or session); at least 2 x 2, no gaps
 * @returns  in the squared unit of the ratings
 * @throws  RangeError where the table is too small or uneven, or a rating is not a finite number
 * Source:  Shrout & Fleiss 1979, Psychol Bull 86:420, tables 1 to 3
 */
export function meanSquares(ratings: readonly (readonly number[])[]): MeanSquares {
  const rows = ratings.length;
  const columns = ratings[0]?.length ?? 0;
  if (rows < 2 || columns < 2) throw new RangeError(`Ratings need 2 x 2 or more, got ${rows} x ${columns}.`);
  const uneven = ratings.find((row) => row.length !== columns);
  if (uneven) throw new RangeError(`Each row needs ${columns} ratings, got one of ${uneven.length}.`);
  requireFinite(ratings.flat());
  const grand = mean(ratings.flat())!;
  const rowMeans = ratings.map((row) => mean(row)!);
  const columnMeans = ratings[0]!.map((_, column) => mean(ratings, (row) => row[column])!);
  const squares = (deviations: number[]) => sum(deviations, (deviation) => deviation ** 2);
  const residuals = ratings.flatMap((row, i) =>
    row.map((rating, j) => rating - rowMeans[i]! - columnMeans[j]! + grand),
  );
  const withins = ratings.flatMap((row, i) => row.map((rating) => rating - rowMeans[i]!));
  return {
    rows,
    columns,
    between: (columns * squares(rowMeans.map((rowMean) => rowMean - grand))) / (rows - 1),
    within: squares(withins) / (rows * (columns - 1)),
    judges: (rows * squares(columnMeans.map((columnMean) => columnMean - grand))) / (columns - 1),
    residual: squares(residuals) / ((rows - 1) * (columns - 1)),
  };
}

/**
 * Intraclass correlation of single ratings in its three forms.
 *
 * ICC(1,1) = (BMS - WMS) / (BMS + (k - 1) WMS)
 * ICC(2,1) = (BMS - EMS) / (BMS + (k - 1) EMS + k (JMS - EMS) / n)
 * ICC(3,1) = (BMS - EMS) / (BMS + (k - 1) EMS)
 *
 * @param ratings  as for meanSquares
 * @returns  at most 1 = rated alike; around 0 or below = the rows can't be distinguished
 * Missing: null where the ratings do not differ in a way that the form can divide up (its denominator is not
 * above 0)
 * @throws  RangeError as meanSquares
 * Source:  Shrout & Fleiss 1979, Psychol Bull 86:420; intervals also McGraw & Wong 1996, Psychol Methods 1:30, table 7 (from
 *   memory)
 */
export function intraclassCorrelation(ratings: readonly (readonly number[])[]): IntraclassCorrelation {
  const squares = meanSquares(ratings);
  const { rows: n, columns: k, between, within, judges, residual } = squares;
  // Below this, differences are rounding errors.
  const least = 1e-12 * Math.max(...ratings.flat().map((rating) => rating ** 2));
  const share = (error: number, extra = 0) => {
    const whole = between + (k - 1) * error + extra;
    return whole > least ? (between - error) / whole : null;
  };
  const agreement = share(residual, (k * (judges - residual)) / n);
  const consistency = share(residual);
  const isShared = Math.min(between, residual) > least;
  return {
    oneWay: share(within),
    agreement,
    consistency,
    agreementInterval: agreement === null || !isShared ? null : agreementInterval(squares, agreement),
    consistencyInterval: consistency === null || !isShared ? null : consistencyInterval(squares),
  };
}

/** The share of F that is left out at either end. */
const tail = 0.975;

function agreementInterval({ rows: n, columns: k, between, judges, residual }: MeanSquares, icc: number) {
  // Degrees of freedom of the judges' and the residual mean square together, by Satterthwaite.
  const a = (k * icc) / (n * (1 - icc));
  const b = 1 + (k * icc * (n - 1)) / (n * (1 - icc));
  const [ofJudges, ofResidual] = [a * judges, b * residual];
  const freedom =
    (ofJudges + ofResidual) ** 2 / (ofJudges ** 2 / (k - 1) + ofResidual ** 2 / ((n - 1) * (k - 1)));
  if (!(freedom > 0)) return null;
  const errors = k * judges + (k * n - k - n) * residual;
  const lower = fQuantile(tail, n - 1, freedom);
  const upper = fQuantile(tail, freedom, n - 1);
  const low = (n * (between - lower * residual)) / (lower * errors + n * between);
  const high = (n * (upper * between - residual)) / (errors + n * upper * between);
  // Below 0 the degrees of freedom can come out as none, and the two ends as nothing.
  return low <= icc && icc <= high ? { low, high } : null;
}

function consistencyInterval({ rows: n, columns: k, between, residual }: MeanSquares) {
  const found = between / residual;
  const freedom = (n - 1) * (k - 1);
  const share = (f: number) => (f - 1) / (f + k - 1);
  return {
    low: share(found / fQuantile(tail, n - 1, freedom)),
    high: share(found * fQuantile(tail, freedom, n - 1)),
  };
}
