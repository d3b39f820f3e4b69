import { CommandProblem } from './commandProblem';

/**
 * One of a fixed list of words.
 *
 * @param name  the option as it is typed, for example '--side'
 * @throws CommandProblem  where the value is missing or not in the list
 */
export function readChoice<Word extends string>(
  name: string,
  value: string | undefined,
  words: readonly Word[],
): Word {
  const found = words.find((word) => word === value);
  if (found !== undefined) return found;
  const known = words.join(', ');
  throw new CommandProblem(
    value === undefined
      ? `${name} is missing. Give one of: ${known}.`
      : `${name} ${value} is not known. Give one of: ${known}.`,
  );
}
