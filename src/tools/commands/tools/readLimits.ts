import { limitEnds, type LimitEnd } from '#core/measures/limitEnd';
import { findMeasure, measureIds, type MeasureId } from '#core/measures/measures';
import { defaultLimits, withLimit, type Limits } from '#core/protocol/limits';
import { CommandProblem } from './commandProblem';

interface NamedLimit {
  measure: MeasureId;
  end: LimitEnd;
  /** 'knee-outward' is given without a sign. */
  sign: 1 | -1;
}

const kneeInward: NamedLimit = { measure: 'knee-angle', end: 'most', sign: 1 };
const kneeOutward: NamedLimit = { measure: 'knee-angle', end: 'least', sign: -1 };

/** 'knee' for both directions of the knee angle, 'trunk-lean-most' and so on for one end of any measure. */
const named = new Map<string, readonly NamedLimit[]>([
  ['knee', [kneeInward, kneeOutward]],
  ['knee-inward', [kneeInward]],
  ['knee-outward', [kneeOutward]],
  ...measureIds.flatMap((measure) =>
    limitEnds.map((end): [string, NamedLimit[]] => [`${measure}-${end}`, [{ measure, end, sign: 1 }]]),
  ),
]);

/**
 * Limits from words such as 'knee=10' (both directions), 'knee-inward=8' or 'trunk-lean-most=10'; what is not named
 * keeps its default. In degrees or percent, with the sign of docs/measurement.md.
 *
 * @throws CommandProblem  for a name that is not known or a value outside the range that makes sense
 */
export function readLimits(words: readonly string[]): Limits {
  let limits = { ...defaultLimits };
  for (const word of words) {
    const at = word.indexOf('=');
    const [name, text] = at < 0 ? [word, ''] : [word.slice(0, at), word.slice(at + 1)];
    const value = text.trim() === '' ? NaN : Number(text);
    const found = named.get(name);
    if (found === undefined) {
      const known = [...named.keys()].join(', ');
      throw new CommandProblem(`--limit ${word} is not known. Give one of: ${known}, as in --limit knee=10.`);
    }
    for (const { measure, end, sign } of found) {
      const { unit, limits: choices } = findMeasure(measure);
      const bounds = [choices[end].min, choices[end].max].map((one) => Math.round(sign * one * unit.factor));
      const range = { min: Math.min(...bounds), max: Math.max(...bounds) };
      checkRange(word, value, range, unit.factor === 1 ? 'degrees' : unit.short.trim());
      limits = withLimit(limits, measure, end, (sign * value) / unit.factor);
    }
  }
  return limits;
}

function checkRange(word: string, value: number, { min, max }: { min: number; max: number }, unit: string) {
  if (value >= min && value <= max) return;
  throw new CommandProblem(`--limit ${word} must be from ${min} to ${max} ${unit}, as in --limit knee=10.`);
}
