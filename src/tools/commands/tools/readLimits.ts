import {
  defaultLimits,
  limitChoices,
  limitEnds,
  limitRangeDeg,
  withLimit,
  type LimitEnd,
  type Limits,
} from '#core/protocol/limits';
import { measureIds, type MeasureId } from '#core/measures/measures';
import { measureUnits } from '#words/formatMeasure';
import { CommandProblem } from './commandProblem';

const kneeNames = {
  knee: ['kneeInwardDeg', 'kneeOutwardDeg'],
  'knee-inward': ['kneeInwardDeg'],
  'knee-outward': ['kneeOutwardDeg'],
} as const satisfies Record<string, readonly (keyof Limits)[]>;

/** 'trunk-lean-most' and so on. */
const measureNames = new Map(
  measureIds.flatMap((measure) =>
    limitEnds.map((end): [string, { measure: MeasureId; end: LimitEnd }] => [
      `${measure}-${end}`,
      { measure, end },
    ]),
  ),
);

/**
 * Limits from words such as 'knee=10' (both directions), 'knee-inward=8' or 'trunk-lean-most=10'; what is not named
 * keeps its default. Measures beside the knee angle in degrees or percent, with the sign of docs/measurement.md.
 *
 * @throws CommandProblem  for a name that is not known or a value outside the range that makes sense
 */
export function readLimits(words: readonly string[]): Limits {
  let limits = { ...defaultLimits };
  for (const word of words) {
    const at = word.indexOf('=');
    const [name, text] = at < 0 ? [word, ''] : [word.slice(0, at), word.slice(at + 1)];
    const value = text.trim() === '' ? NaN : Number(text);
    const other = measureNames.get(name);
    if (other !== undefined) {
      const { measure, end } = other;
      const { min, max } = limitChoices[measure][end];
      const { factor, short } = measureUnits[measure];
      checkRange(word, value, { min: Math.round(min * factor), max: Math.round(max * factor) }, short.trim());
      limits = withLimit(limits, measure, end, value / factor);
    } else if (isKneeName(name)) {
      checkRange(word, value, limitRangeDeg, 'degrees');
      for (const limit of kneeNames[name]) limits[limit] = value;
    } else {
      const known = [...Object.keys(kneeNames), ...measureNames.keys()].join(', ');
      throw new CommandProblem(`--limit ${word} is not known. Give one of: ${known}, as in --limit knee=10.`);
    }
  }
  return limits;
}

function checkRange(word: string, value: number, { min, max }: { min: number; max: number }, unit: string) {
  if (value >= min && value <= max) return;
  throw new CommandProblem(`--limit ${word} must be from ${min} to ${max} ${unit}, as in --limit knee=10.`);
}

function isKneeName(name: string): name is keyof typeof kneeNames {
  return Object.hasOwn(kneeNames, name);
}
