import { deviation } from 'd3-array';
import { betweenDaysSemDeg } from '../change/publishedSem';
import { blandAltman, type Agreement } from '../statistics/blandAltman';
import { intraclassCorrelation, type IntraclassCorrelation } from '../statistics/intraclassCorrelation';
import { withinSubject, type WithinSubject } from '../statistics/withinSubject';

/** A set filmed twice: the person walked away in between, and the camera was set up again. */
export interface Repeat {
  first: number;
  second: number;
}

/** The second time on the same day, or on another one before treatment. */
export const repeatKinds = ['same-day', 'other-day'] as const;
export type RepeatKind = (typeof repeatKinds)[number];

/** Below this number of repeats only the published error is used. Our choice, no source. */
export const leastRepeats = 5;

/** The published error counts as much as this number of own repeats. Our choice, no source. */
export const publishedWeight = 8;

export interface OwnError {
  /** Null without repeats. */
  own: WithinSubject | null;
  /** Standard error of measurement to reckon with, same unit. */
  used: number;
  from: 'published' | 'both';
}

/**
 * A practice's own error of measurement between days, drawn towards the published one:
 * sqrt((8 published^2 + n own^2) / (8 + n)).
 *
 * A few lucky repeats give an own error that is far too small, so it is never used by itself. The published one fades as
 * repeats are added: with 8 both count the same, with 32 it counts a fifth. There is no number of repeats at which it is
 * dropped, since the error in use would jump there.
 *
 * @param repeats  of other days; those of the same day lack what differs between days
 * @param published  same unit
 * @throws  RangeError where a value is not a finite number
 * Source:  mean of two variances weighted by their degrees of freedom
 */
export function ownError(repeats: readonly Repeat[], published = betweenDaysSemDeg): OwnError {
  const own = withinSubject(
    repeats.map(({ first }) => first),
    repeats.map(({ second }) => second),
  );
  if (own === null || own.count < leastRepeats) return { own, used: published, from: 'published' };
  const squares = publishedWeight * published ** 2 + own.count * own.sd ** 2;
  return { own, used: Math.sqrt(squares / (publishedWeight + own.count)), from: 'both' };
}

/**
 * The error of one set between days to reckon with: the practice's own where it is known; else the published one, or
 * the set's own band where that is wider.
 *
 * @param bandSd  one standard deviation of the sets' own error, same unit, 0 or above
 */
export function semOfDay({ used, from }: OwnError, bandSd: number): number {
  return from === 'both' ? used : Math.max(used, bandSd);
}

/** How far the second time is from the first, and how well sets are told apart. */
export interface RepeatAgreement {
  /** Second less first: above 0 = the second time reads higher. */
  limits: Agreement;
  icc: IntraclassCorrelation;
  /** Standard deviation between the means of the pairs: a correlation depends on it. */
  sdBetween: number;
}

/**
 * Limits of agreement and intraclass correlation of repeats of one kind.
 *
 * @param repeats  of the same day, or of other days; the two are not mixed
 * Missing: null below 5 repeats: our choice, no source
 * @throws  RangeError where a value is not a finite number
 * Source:  `blandAltman`, `intraclassCorrelation`
 */
export function repeatAgreement(repeats: readonly Repeat[]): RepeatAgreement | null {
  if (repeats.length < leastRepeats) return null;
  const limits = blandAltman(
    repeats.map(({ second }) => second),
    repeats.map(({ first }) => first),
  )!;
  return {
    limits,
    icc: intraclassCorrelation(repeats.map(({ first, second }) => [first, second])),
    sdBetween: deviation(repeats, ({ first, second }) => (first + second) / 2)!,
  };
}
