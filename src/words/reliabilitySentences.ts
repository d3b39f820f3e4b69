import { leastJudged, type EyeAgreement, type EyeRepeat } from '#core/reliability/eyeAgreement';
import {
  leastRepeats,
  type OwnError,
  type RepeatAgreement,
  type RepeatKind,
} from '#core/reliability/ownError';
import type { Agreement, Interval } from '#core/statistics/blandAltman';
import type { IntraclassCorrelation } from '#core/statistics/intraclassCorrelation';
import type { Kappa } from '#core/statistics/kappa';
import { oneDecimal } from './oneDecimal';

/** A practice's own error of the knee angle, degrees, and which one is used. */
export function ownErrorSentences({ own, used, from }: OwnError, kind: RepeatKind): string[] {
  if (own === null)
    return [`No set was filmed again yet. The published error is used: ${oneDecimal(used)}°.`];
  const when = kind === 'same-day' ? 'on the same day' : 'on another day';
  const told = `Own error, from ${own.count} ${own.count === 1 ? 'repeat' : 'repeats'} ${when}: ${oneDecimal(own.sd)}° (${oneDecimal(own.low)} to ${oneDecimal(own.high)}).`;
  if (kind === 'same-day')
    return [told, 'It lacks what differs between days, so it is not used for a change over days.'];
  return [
    told,
    from === 'both'
      ? `Used, drawn towards the published error: ${oneDecimal(used)}°.`
      : `Below ${leastRepeats} repeats the published error is used: ${oneDecimal(used)}°.`,
  ];
}

/** How far two ratings agree; without a word that judges it. */
export function kappaSentence(found: Kappa | null): string {
  if (found === null) return oneClass;
  const { linear, quadratic } = found;
  return (
    `${agreementBeyondChance(found)}; weighted by distance ${twoDecimals(linear)}, ` +
    `by its square ${twoDecimals(quadratic)}.`
  );
}

const oneClass = 'One class was used throughout, so agreement beyond chance cannot be told.';

function agreementBeyondChance({ count, agreement, chance, kappa, low, high }: Kappa): string {
  return (
    `Rated alike: ${Math.round(100 * agreement)} % of ${count}; by chance it would be ${Math.round(100 * chance)} %. ` +
    `Kappa ${twoDecimals(kappa)} (${twoDecimals(low)} to ${twoDecimals(high)})`
  );
}

/** How far an eye and the measuring agree; without a word that judges either. */
export function eyeSentences({ counts, untold, kappa }: EyeAgreement): string[] {
  const { bothIn, bothOut, outByEye, outByMeasuring } = counts;
  const told =
    `In line both ways ${bothIn}, out of line both ways ${bothOut}; ` +
    `out of line by eye alone ${outByEye}, by measuring alone ${outByMeasuring}.`;
  const left =
    untold === 0
      ? []
      : [`Of ${untold} more, measuring names no side; ${untold === 1 ? 'it is' : 'they are'} not counted.`];
  if (kappa === 'too-few')
    return [told, ...left, `Kappa takes ${leastJudged} repetitions at least; these are too few.`];
  return [told, ...left, kappa === null ? oneClass : `${agreementBeyondChance(kappa)}.`];
}

/** How far an eye agrees with itself; without a word that judges it. */
export function eyeTwiceSentences({ counts, kappa }: EyeRepeat): string[] {
  const { alikeIn, alikeOut, thenOut, nowOut } = counts;
  const told =
    `The same repetitions judged twice: in line both times ${alikeIn}, out of line both times ${alikeOut}; ` +
    `out of line only the first time ${thenOut}, only the second time ${nowOut}.`;
  if (kappa === 'too-few')
    return [told, `Kappa takes ${leastJudged} repetitions at least; these are too few.`];
  return [told, kappa === null ? oneClass : `${agreementBeyondChance(kappa)}.`];
}

/**
 * How far two ways of measuring, or two times, are apart, with 95 % intervals.
 *
 * @param what  which is taken from which
 * @param unit  put right behind each number
 */
export function agreementSentence(found: Agreement | null, what = 'First less second', unit = ''): string {
  if (found === null) return 'Limits of agreement take two pairs at least.';
  const { count, meanDifference, lowerLimit, upperLimit, ofMean, ofLowerLimit, ofUpperLimit } = found;
  const said = (value: number) => `${oneDecimal(value)}${unit}`;
  const within = ({ low, high }: Interval) => `(${said(low)} to ${said(high)})`;
  return (
    `${what}, ${count} pairs: ${said(meanDifference)} on average ${within(ofMean)}; ` +
    `95 % of differences lie between ${said(lowerLimit)} ${within(ofLowerLimit)} and ` +
    `${said(upperLimit)} ${within(ofUpperLimit)}.`
  );
}

/**
 * How well people or sets are told apart; it depends on how much they differ.
 *
 * @param unit  put right behind the standard deviation
 */
export function iccSentence(
  { agreement, agreementInterval }: IntraclassCorrelation,
  sdBetween: number,
  among: 'people who' | 'sets that' = 'people who',
  unit = '',
): string {
  const interval =
    agreementInterval === null
      ? ''
      : ` (${twoDecimals(agreementInterval.low)} to ${twoDecimals(agreementInterval.high)})`;
  const value = agreement === null ? 'cannot be told' : `${twoDecimals(agreement)}${interval}`;
  return `ICC(2,1): ${value}, among ${among} differ by a standard deviation of ${oneDecimal(sdBetween)}${unit}.`;
}

/** How far the second time of a set is from the first, and how well sets are told apart. */
export function repeatSentences(found: RepeatAgreement | null): string[] {
  if (found === null) return [`Limits of agreement are shown from ${leastRepeats} repeats on.`];
  return [
    agreementSentence(found.limits, 'Second less first', '°'),
    iccSentence(found.icc, found.sdBetween, 'sets that', '°'),
  ];
}

function twoDecimals(value: number): string {
  return value.toFixed(2).replace('-', '−');
}
