import type { ChangeOfSets, CourseOfTests } from '#core/change/changeOfSets';
import type { Symmetry } from '#core/change/limbSymmetry';
import type { PainChange } from '#core/change/painChange';
import type { SideDifference } from '#core/change/sideDifference';
import type { Side } from '#core/protocol/side';
import { conditionSentences } from './conditionSentences';
import type { DayName } from './dayName';
import { oneDecimal } from './oneDecimal';

/** What is said with every change of the knee angle. */
export const noImportantChange =
  'What size of change in this angle matters to people has not been published, as far as we know.';

/** Whether sets of the knee angle, degrees, inward positive, differ beyond error. */
export function changeSentences(result: ChangeOfSets): string[] {
  if (result.kind === 'unlike') return conditionSentences(result.comparison);
  const { earlier, later, difference, detectable, verdict } = result.change;
  const means = `${meanWords(earlier)} then, ${meanWords(later)} now`;
  const told =
    verdict === 'within-error'
      ? `No change beyond error: ${wayWords(difference)}, and error alone can make ${oneDecimal(detectable)}°.`
      : `${wayWords(difference)}, beyond error, which can make ${oneDecimal(detectable)}°.`;
  return [
    `Mean inward knee angle: ${means}. ${told}`,
    ...conditionSentences({ differences: [], notNoted: result.notNoted }),
    noImportantChange,
  ];
}

/** How the tests of the knee angle went over the weeks. */
export function courseSentences(
  { weeks, slope, leftOut, trainingSets }: CourseOfTests,
  dayName: DayName = (day) => `day ${day}`,
): string[] {
  const told =
    slope === null
      ? `Weeks with tests: ${weeks.length}. A course takes 3.`
      : slope.isBeyondError
        ? `In ${slope.span} weeks: ${wayWords(slope.change)}, give or take ${oneDecimal(slope.changeBand)}°. Beyond error.`
        : `In ${slope.span} weeks no change beyond error yet: ${wayWords(slope.change)}, give or take ` +
          `${oneDecimal(slope.changeBand)}°.`;
  return [
    told,
    ...leftOut.flatMap(({ day, comparison }) => conditionSentences(comparison, ` (${dayName(day)})`)),
    ...(trainingSets > 0 ? [`Sets of training that are not in it: ${trainingSets}.`] : []),
    noImportantChange,
  ];
}

/**
 * How pain changed from then to now.
 *
 * @param what  which pain, as a sentence begins: 'Worst pain of the day'
 */
export function painSentence(what: string, { earlier, later, difference, size }: PainChange): string {
  const points = oneDecimal(Math.abs(difference));
  const change = `${points} ${points === '1' ? 'point' : 'points'} ${difference < 0 ? 'less' : 'more'}`;
  const told = {
    small: difference === 0 ? 'The same.' : `${change}, which may be chance.`,
    important: `${change}: as large as people call important, but within error.`,
    'beyond-error': `${change}, beyond error.`,
  }[size];
  return `${what}, median: ${oneDecimal(earlier)} then, ${oneDecimal(later)} now. ${told}`;
}

/** Whether the knee angles of left and right differ beyond error. */
export function sideSentence({ leftDeg, rightDeg, difference, bandDeg, verdict }: SideDifference): string {
  const told =
    verdict === 'within-error'
      ? 'No difference beyond error.'
      : `Beyond error: ${verdict === 'higher' ? 'left' : 'right'} is farther inward.`;
  return (
    `Inward knee angle left ${oneDecimal(leftDeg)}°, right ${oneDecimal(rightDeg)}°: a difference of ` +
    `${oneDecimal(Math.abs(difference))}°, give or take ${oneDecimal(bandDeg)}. ${told}`
  );
}

/**
 * How much the involved leg does of what the other does.
 *
 * @param before  whether the other leg's amount is from before the injury or operation
 */
export function symmetrySentence(
  symmetry: Symmetry,
  { involved, before, linePct }: { involved: Side; before: boolean; linePct: number },
): string {
  const other = before ? 'the other leg before the injury' : 'the other leg';
  const { pct, interval, toLine } = symmetry;
  const share = `The ${involved} leg does ${Math.round(pct)} % of ${other}`;
  if (interval === null) return `${share}. No error of it is known, so no interval.`;
  const range = `${Math.round(interval.lowPct)} to ${Math.round(interval.highPct)}`;
  const line = {
    below: `Below ${linePct} % beyond error.`,
    beyond: `At ${linePct} % or more beyond error.`,
    'within-error': `${linePct} % is within error.`,
    unknown: '',
  }[toLine];
  return `${share} (${range}). ${line}`;
}

function meanWords({ mean, count }: { mean: number; count: number }): string {
  return `${oneDecimal(mean)}° (${count} ${count === 1 ? 'day' : 'days'})`;
}

/** '5.3° less inward' */
function wayWords(difference: number): string {
  const size = oneDecimal(Math.abs(difference));
  return size === '0' ? '0°' : `${size}° ${difference < 0 ? 'less' : 'more'} inward`;
}
