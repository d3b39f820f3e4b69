import { pairs, range } from 'd3-array';
import { normalDensity } from '../statistics/normalCdf';

/** A shared error at which a repetition turns from in line to beyond a limit, and how gradually it does. */
export interface Turn {
  at: number;
  /** One standard deviation of the repetition's own error, same unit, 0 or more; 0 for a turn at once. */
  ownSd: number;
}

export interface SharedError {
  error: number;
  /** Share of the normal distribution that it stands for; all together 1. */
  weight: number;
}

/** Standard deviations to either side that are summed over: 1e-15 is left out. */
const reach = 8;
/** Length of a piece that is summed over, in standard deviations. */
const piece = 0.25;
/** A turn quicker than this, in standard deviations, changes too much within one piece. */
const quick = 0.2;
/** Where a quick turn is cut into pieces of its own, in its own standard deviations. */
const cuts = [-6, -4, -3, -2, -1, 0, 1, 2, 3, 4, 6];

/** Abscissas and weights of eight points on -1 to 1, without their mirror images. */
const points = [
  [0.1834346424956498, 0.362683783378362],
  [0.525532409916329, 0.3137066458778873],
  [0.7966664774136267, 0.2223810344533745],
  [0.9602898564975363, 0.1012285362903763],
] as const;

/**
 * Values of a normal error with mean 0, and the weights with which a function of it is summed to its mean:
 * Gauss-Legendre quadrature, piece by piece. The function may change at turns, and as fast as they say.
 *
 * @param sd  one standard deviation, 0 or more; with 0 there is one value, 0
 * @param turns  in the same unit; those beyond 8 standard deviations make no difference
 * @returns  for a product of up to 60 turns, within 1e-7 of the mean
 * Source:  Abramowitz & Stegun 25.4.29 and table 25.4, n = 8
 */
export function sharedErrors(sd: number, turns: readonly Turn[]): SharedError[] {
  if (sd === 0) return [{ error: 0, weight: 1 }];
  const even = range(-reach, reach + piece, piece);
  const turning = turns
    .filter(({ ownSd }) => ownSd < quick * sd)
    .flatMap(({ at, ownSd }) => cuts.map((cut) => (at + cut * ownSd) / sd))
    .filter((z) => Math.abs(z) < reach);
  const edges = [...new Set([...even, ...turning])].sort((a, b) => a - b);
  return pairs(edges).flatMap(([from, to]) => {
    const [middle, half] = [(from + to) / 2, (to - from) / 2];
    return points.flatMap(([at, share]) =>
      [-at, at].map((place) => {
        const z = middle + half * place;
        return { error: sd * z, weight: half * share * normalDensity(z) };
      }),
    );
  });
}
