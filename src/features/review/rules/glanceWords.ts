import { findMeasure } from '#core/measures/measures';
import { formatValue, measureName } from '#words/formatMeasure';
import type { LostGroup, SetGlance } from './buildSetGlance';

/** The set in one line: 'Most likely 4 of 6 in line (3 to 5), 1 not clear.' */
export function countSentence({ inLine, done, excluded, notClear, notMeasured }: SetGlance): string {
  if (done === 0) return excluded > 0 ? 'No repetition counts: all are excluded.' : 'No whole repetition.';
  if (inLine === null) return done === 1 ? 'The repetition is not measured.' : `None of ${done} is measured.`;
  const { low, high, mode, chancesInLine } = inLine;
  const parts = [
    low === high
      ? `${low} of ${chancesInLine.length} in line`
      : `${Math.min(high, Math.max(low, mode))} of ${chancesInLine.length} in line (${low} to ${high})`,
    ...(notClear > 0 ? [`${notClear} not clear`] : []),
    ...(notMeasured > 0 ? [`${notMeasured} not measured`] : []),
  ];
  return `${parts.join(', ')}.`;
}

/** Which repetitions were lost, and which way: 'Out of line inward: 6, probably 3.' Empty where none was. */
export function lostSentence({ lost }: SetGlance): string {
  if (lost.length === 0) return '';
  return `Out of line ${lost.map((group) => `${wayOf(group)}: ${numbers(group)}`).join('; ')}.`;
}

/** 'Worst 17° inward (repetition 6), median 8°.' Empty where nothing was measured. */
export function peaksSentence({ worst, medianDeg, medianEnd }: SetGlance): string {
  if (worst === null || medianDeg === null) return '';
  const middle = `${Math.round(medianDeg)}°`;
  const way = medianEnd === null ? `${middle} either way` : middle;
  return `Worst ${formatValue('knee-angle', worst.extreme.value)} (repetition ${worst.number}), median ${way}.`;
}

/** The word for the worst way of a group: 'inward'; of another measure 'in pelvic drop, free side down'. */
function wayOf({ measure, end }: LostGroup): string {
  const { isAlwaysLimited, ways } = findMeasure(measure);
  const way = ways?.[end].long ?? (end === 'most' ? 'too much' : 'too little');
  return isAlwaysLimited ? way : `in ${measureName(measure)}, ${way}`;
}

/** The certain ones first: '6, probably 3 and 5'. */
function numbers({ repetitions }: LostGroup): string {
  const certain = repetitions.filter(({ isProbable }) => !isProbable).map(({ number }) => number);
  const probable = repetitions.filter(({ isProbable }) => isProbable).map(({ number }) => number);
  return [
    ...(certain.length === 0 ? [] : [listed(certain)]),
    ...(probable.length === 0 ? [] : [`probably ${listed(probable)}`]),
  ].join(', ');
}

/** Repetitions by number, runs of three or more in short: '1, 3 to 6, 9'. */
function listed(all: readonly number[]): string {
  const runs: [from: number, to: number][] = [];
  for (const number of all) {
    const last = runs.at(-1);
    if (last !== undefined && last[1] === number - 1) last[1] = number;
    else runs.push([number, number]);
  }
  return runs
    .map(([from, to]) => (to - from > 1 ? `${from} to ${to}` : to > from ? `${from}, ${to}` : `${from}`))
    .join(', ');
}
