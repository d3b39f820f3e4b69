import { defaultLimits, limitRangeDeg, type Limits } from '../../protocol/limits';
import { CommandProblem } from './commandProblem';

const names = {
  knee: ['kneeInwardDeg', 'kneeOutwardDeg'],
  'knee-inward': ['kneeInwardDeg'],
  'knee-outward': ['kneeOutwardDeg'],
} as const satisfies Record<string, readonly (keyof Limits)[]>;

/**
 * Limits from words such as 'knee=10' (both directions) or 'knee-inward=8'; what is not named keeps its default.
 *
 * @throws CommandProblem  for a name that is not known or an angle outside the range that makes sense
 */
export function readLimits(words: readonly string[]): Limits {
  const limits = { ...defaultLimits };
  for (const word of words) {
    const at = word.indexOf('=');
    const [name, text] = at < 0 ? [word, ''] : [word.slice(0, at), word.slice(at + 1)];
    if (!isName(name)) {
      throw new CommandProblem(
        `--limit ${word} is not known. Give one of: ${Object.keys(names).join(', ')}, as in --limit knee=10.`,
      );
    }
    const angleDeg = text.trim() === '' ? NaN : Number(text);
    if (!(angleDeg >= limitRangeDeg.min && angleDeg <= limitRangeDeg.max)) {
      throw new CommandProblem(
        `--limit ${word} must be an angle from ${limitRangeDeg.min} to ${limitRangeDeg.max} degrees, as in --limit knee=10.`,
      );
    }
    for (const limit of names[name]) limits[limit] = angleDeg;
  }
  return limits;
}

function isName(name: string): name is keyof typeof names {
  return Object.hasOwn(names, name);
}
