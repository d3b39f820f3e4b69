import { leastRepeats, type OwnError, type RepeatKind } from '#core/reliability/ownError';
import type { Agreement } from '#core/statistics/blandAltman';
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
  if (found === null) return 'One class was used throughout, so agreement beyond chance cannot be told.';
  const { count, agreement, chance, kappa, low, high, linear, quadratic } = found;
  return (
    `Rated alike: ${Math.round(100 * agreement)} % of ${count}; by chance it would be ${Math.round(100 * chance)} %. ` +
    `Kappa ${twoDecimals(kappa)} (${twoDecimals(low)} to ${twoDecimals(high)}); weighted by distance ` +
    `${twoDecimals(linear)}, by its square ${twoDecimals(quadratic)}.`
  );
}

/** How far two ways of measuring are apart, first - second. */
export function agreementSentence(found: Agreement | null): string {
  if (found === null) return 'Limits of agreement take two pairs at least.';
  const { count, meanDifference, lowerLimit, upperLimit } = found;
  return (
    `First less second, ${count} pairs: ${oneDecimal(meanDifference)} on average; ` +
    `95 % of differences lie between ${oneDecimal(lowerLimit)} and ${oneDecimal(upperLimit)}.`
  );
}

/** How well people are told apart; it depends on how much they differ. */
export function iccSentence({ agreement }: IntraclassCorrelation, sdBetweenPeople: number): string {
  const value = agreement === null ? 'cannot be told' : twoDecimals(agreement);
  return `ICC(2,1): ${value}, among people who differ by a standard deviation of ${oneDecimal(sdBetweenPeople)}.`;
}

function twoDecimals(value: number): string {
  return value.toFixed(2).replace('-', '−');
}
