import { max, sum } from 'd3-array';
import { limitEnds, type LimitEnd } from '../measures/limitEnd';
import type { EndLimits } from '../protocol/limits';
import { chanceOfRoom } from '../statistics/normalCdf';
import { requireFinite } from '../statistics/requireFinite';
import { countQuantile, rounding } from './countQuantile';
import { sharedErrors, type Turn } from './sharedErrors';

/** A repetition's extremes, each named after the limit that it is held against; one that is not known is left out. */
export type HeldExtremes = { [End in LimitEnd]?: number | undefined };

/** Errors of the extremes of a set, normal with mean 0: standard deviations in the unit of the measure, 0 or more. */
export interface SetErrors {
  /** Of what is off alike in all repetitions, such as the view. */
  sharedSd: number;
  /** Of what is off in each repetition by itself; one for each. */
  ownSds: readonly number[];
}

export interface CountInLine {
  /** The mean of the count, 0 to the number of repetitions. Like `mode`, it may lie outside `low` to `high`. */
  expected: number;
  /** 5 % quantile of the count. */
  low: number;
  /** 95 % quantile of the count. */
  high: number;
  /** The most likely count; of several that are equally likely, the smallest. */
  mode: number;
  /** Chance that each repetition was in line, 0 to 1; 1 less it is the chance that it was beyond a limit. */
  chancesInLine: number[];
  /** Chance of each count from 0 to the number of repetitions. */
  countChances: number[];
}

/** What is left out on either side of `low` to `high`. */
const tail = 0.05;

/**
 * How many repetitions of a set were in line, as the distribution of their number. Most of the error is shared by the
 * whole set, so repetitions near a limit tend to be on the same side of it.
 *
 * With e, what the truth has on top of every extreme alike, a repetition of extremes x (held against most) and y
 * (held against least) was in line with q(e) = Phi((most - x - e) / own) Phi((y + e - least) / own), and the number
 * in line has the Poisson binomial distribution of these q(e). Both are averaged over e.
 *
 * Frame:   any measure, its own unit and sign alike in extremes, limits and errors
 * @param repetitions  one at least, in any order
 * @param limits  an end without a limit, or without an extreme to hold against it, counts as kept
 * @returns  probabilities within 1e-7 for up to 60 repetitions, whatever the errors' sizes
 * Sign:    as in documents: of the knee angle, most is the inward limit (10) and least the outward one (-10)
 * Missing: repetitions that were not measured are left out before, and are no part of the count
 * @throws  RangeError where there is no repetition, where there is not one own error for each, where an error is
 *   below 0, or where a value is not a finite number
 * Source:  Poisson binomial: repetitions are added one by one, P(k) = P'(k) (1 - q) + P'(k - 1) q. The own errors of
 *   a repetition's two extremes count as independent, since they are read at different moments
 */
export function countInLine(
  repetitions: readonly HeldExtremes[],
  limits: EndLimits,
  { sharedSd, ownSds }: SetErrors,
): CountInLine {
  requireErrors(repetitions.length, sharedSd, ownSds);
  const ends = repetitions.map((extremes, i) => turnsOf(extremes, limits, ownSds[i]!));
  const chancesInLine = ends.map(() => 0);
  const countChances = [0, ...chancesInLine];
  for (const { error, weight } of sharedErrors(sharedSd, ends.flat())) {
    const given = ends.map((turns) => chanceGiven(error, turns));
    given.forEach((chance, i) => (chancesInLine[i]! += weight * chance));
    poissonBinomial(given).forEach((chance, count) => (countChances[count]! += weight * chance));
  }
  const chances = chancesInLine.map((chance) => Math.min(1, chance));
  const largest = max(countChances)!;
  return {
    expected: sum(chances),
    low: countQuantile(countChances, tail),
    high: countQuantile(countChances, 1 - tail),
    mode: countChances.findIndex((chance) => chance > largest - rounding),
    chancesInLine: chances,
    countChances,
  };
}

function requireErrors(count: number, sharedSd: number, ownSds: readonly number[]): void {
  if (count === 0) throw new RangeError('A count needs at least one repetition.');
  if (ownSds.length !== count)
    throw new RangeError(`Each repetition needs an own error: got ${ownSds.length} for ${count}.`);
  requireFinite([sharedSd, ...ownSds]);
  const below = [sharedSd, ...ownSds].find((sd) => sd < 0);
  if (below !== undefined) throw new RangeError(`A standard deviation is 0 or above, got ${below}.`);
}

interface EndTurn extends Turn {
  /** Which shared errors keep the limit: those below the turn, or those above it. */
  keeps: 'below' | 'above';
}

function turnsOf(extremes: HeldExtremes, limits: EndLimits, ownSd: number): EndTurn[] {
  return limitEnds.flatMap((end) => {
    const [extreme, limit] = [extremes[end], limits[end]];
    if (extreme === undefined || limit === undefined) return [];
    requireFinite([extreme, limit]);
    return [{ at: limit - extreme, ownSd, keeps: end === 'most' ? 'below' : 'above' }];
  });
}

/** The chance that every limit was kept, given the shared error. A value exactly at a limit is in line. */
function chanceGiven(error: number, turns: readonly EndTurn[]): number {
  return turns.reduce((chance, { at, ownSd, keeps }) => {
    const room = keeps === 'below' ? at - error : error - at;
    return chance * chanceOfRoom(room, ownSd);
  }, 1);
}

/** Chance of each number of successes, from none to all, of trials that succeed independently with these chances. */
function poissonBinomial(chances: readonly number[]): Float64Array {
  const counts = new Float64Array(chances.length + 1);
  const sure = chances.filter((chance) => chance === 1).length;
  counts[sure] = 1;
  let most = sure;
  for (const chance of chances) {
    if (chance === 0 || chance === 1) continue;
    most++;
    for (let k = most; k > sure; k--) counts[k] = counts[k]! * (1 - chance) + counts[k - 1]! * chance;
    counts[sure]! *= 1 - chance;
  }
  return counts;
}
