import { bodyHeightRangeCm } from '#core/protocol/bodyHeight';
import { CommandProblem } from './commandProblem';

/**
 * Body height from a word such as '172', cm.
 *
 * @throws CommandProblem  where it is not a number or not a plausible body height
 */
export function readHeight(text: string | undefined): { bodyHeightCm?: number } {
  if (text === undefined) return {};
  const bodyHeightCm = text.trim() === '' ? NaN : Number(text);
  const { min, max } = bodyHeightRangeCm;
  if (bodyHeightCm >= min && bodyHeightCm <= max) return { bodyHeightCm };
  throw new CommandProblem(
    `--height ${text} must be a body height from ${min} to ${max} cm, as in --height 172.`,
  );
}
