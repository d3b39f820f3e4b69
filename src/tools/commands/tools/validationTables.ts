import Table from 'cli-table3';
import { usualSureness } from '#core/chance/grade';
import { verdictSide } from '#core/scoring/verdict';
import type { ChanceGroup } from '#tools/validation/chancesHeld';
import { comparedLimitDeg } from '../../validation/compareClip';
import type { ErrorFigures } from '../../validation/describeErrors';
import type { HeldBands } from '../../validation/leaveClipsOut';
import { clearDeg, type Summary } from '../../validation/summariseClips';
import type { ValidatedClip } from './validatedClip';

const plain = { head: [], border: [], compact: true };
const none = '–';

/** One line per clip: how many repetitions, and for each the true and the measured peak. */
export function clipTable(clips: readonly ValidatedClip[]): string {
  const table = new Table({
    head: [
      'Clip',
      'Yaw',
      'Found/true',
      'Peaks, measured (true), degrees inward',
      'Verdicts',
      'Timing',
      'Frames/s',
    ],
    colAligns: ['left', 'right', 'right', 'left', 'right', 'right', 'right'],
    style: plain,
  });
  for (const clip of clips) {
    const { repetitions } = clip;
    const peaks = repetitions.map(
      ({ measuredPeakDeg, truePeakDeg }) => `${number(measuredPeakDeg, 1)} (${truePeakDeg.toFixed(1)})`,
    );
    const alike = repetitions.filter(
      ({ verdict, trueVerdict }) => verdictSide(verdict) === trueVerdict,
    ).length;
    table.push([
      clip.clip,
      `${clip.camera.yawDeg}°`,
      `${clip.repsFound}/${clip.repsTrue}`,
      clip.problem ?? peaks.join(', '),
      `${alike} of ${repetitions.length}`,
      clip.timingMaeS === null ? none : `${clip.timingMaeS.toFixed(2)} s`,
      number(clip.framesPerSecond, 1),
    ]);
  }
  return table.toString();
}

/** One line per group of clips, below what its columns mean. */
export function summaryTable(groups: readonly (readonly [string, Summary])[]): string {
  const table = new Table({
    head: [
      'Camera or task',
      'Clips',
      'Counted right',
      'Found/true',
      'Not measured',
      'Frontal plane',
      'In band',
      'Median ±',
      'Picture joints',
      'Decided',
      'Right',
      'Wrong outside band',
      'Timing',
    ],
    colAligns: ['left', ...new Array<'right'>(12).fill('right')],
    style: plain,
  });
  for (const [name, summary] of groups) {
    table.push([
      name,
      `${summary.clips}`,
      `${summary.clipsCountedRight}`,
      `${summary.repsFound}/${summary.repsTrue}`,
      percent(summary.refusedPct),
      figures(summary.peakDeg),
      percent(summary.withinBandPct),
      `${number(summary.medianBandDeg, 1)}°`,
      figures(summary.picturePeakDeg),
      sharePercent(summary.decidedShare),
      sharePercent(summary.decidedRight),
      percent(summary.wrongOutsideBandPct),
      summary.timingMaeS === null ? none : `${summary.timingMaeS.toFixed(2)} s`,
    ]);
  }
  return [
    'Peak errors in degrees: mean absolute, bias (measured less true), largest.',
    `Decided: of repetitions truly more than ${clearDeg}° from the limit of ${comparedLimitDeg}°, those for which a ` +
      `side is named with ${100 * usualSureness} % sureness. Right: of these, those on that side.`,
    table.toString(),
  ].join('\n');
}

/** One line per group of clips: how often bands hold that were fitted without the clip. */
export function heldTable(groups: readonly (readonly [string, HeldBands])[]): string {
  const table = new Table({
    head: ['Left out one by one', 'Clips', 'Peaks', 'In band', '95 % interval'],
    colAligns: ['left', 'right', 'right', 'right', 'right'],
    style: plain,
  });
  for (const [name, { clips, repetitions, coverage }] of groups) {
    const { share, low, high } = coverage ?? { share: null, low: null, high: null };
    const interval = `${sharePercent(low)} to ${sharePercent(high)}`;
    table.push([name, `${clips}`, `${repetitions}`, sharePercent(share), interval]);
  }
  return ['Bands of each clip as wide as all other clips make them:', table.toString()].join('\n');
}

/** One line per chance that is said: how often it came true. */
export function chanceTable(groups: readonly ChanceGroup[]): string {
  const table = new Table({
    head: ['Chance of the likelier side', 'Comparisons', 'Right'],
    colAligns: ['left', 'right', 'right'],
    style: plain,
  });
  for (const { from, to, comparisons, right } of groups)
    table.push([`${sharePercent(from)} to ${sharePercent(to)}`, `${comparisons}`, sharePercent(right)]);
  return ['Each peak against limits of 4 to 18 degrees, with those bands:', table.toString()].join('\n');
}

/** One line per event: how far off its time is found. */
export function timingTable({ timingS }: Summary): string {
  const table = new Table({
    head: ['Event', 'Mean absolute', 'Bias', 'Largest'],
    colAligns: ['left', 'right', 'right', 'right'],
    style: plain,
  });
  for (const [event, { meanAbsolute, bias, largest }] of Object.entries(timingS)) {
    table.push([event, ...[meanAbsolute, bias, largest].map((value) => `${number(value, 2)} s`)]);
  }
  return table.toString();
}

function percent(value: number | null): string {
  return value === null ? none : `${value.toFixed(0)} %`;
}

function sharePercent(share: number | null): string {
  return percent(share === null ? null : 100 * share);
}

function figures({ meanAbsolute, bias, largest }: ErrorFigures): string {
  return [meanAbsolute, bias, largest].map((value) => number(value, 1)).join(', ');
}

function number(value: number | null, digits: number): string {
  return value === null ? none : value.toFixed(digits);
}
