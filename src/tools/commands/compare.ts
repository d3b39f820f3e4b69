import { z } from 'zod';
import { CommandProblem } from './tools/commandProblem';
import { comparisons } from './tools/compare/comparisons';
import { readArguments } from './tools/readArguments';
import { readShaped } from './tools/readShaped';
import { runCommand } from './tools/runCommand';

const kinds = Object.keys(comparisons);
const usage =
  `Usage: npm run -s compare -- FILE.json   (FILE.json holds kind: ${kinds.join(', ')}; ` +
  '--kinds lists what else each takes)';

await runCommand(async () => {
  const { positionals, values } = readArguments({ kinds: { type: 'boolean' } }, usage);
  if (values.kinds === true)
    return console.log(
      Object.entries(comparisons)
        .map(([kind, { holds }]) => `${kind}: ${holds}`)
        .join('\n'),
    );
  const [path, ...more] = positionals;
  if (path === undefined) throw new CommandProblem(`The file is missing. ${usage}`);
  if (more.length > 0)
    throw new CommandProblem(`One file at a time, please; "${more[0]}" is too much. ${usage}`);
  const { kind } = readShaped(path, z.looseObject({ kind: z.enum(kinds) }), 'something to compare');
  const { schema, compare } = comparisons[kind]!;
  const input = readShaped(path, schema, `a comparison of the kind "${kind}"`);
  console.log(JSON.stringify(compared(path, () => compare(input))));
});

/** What the core refuses beyond the shape of a file, such as columns of unequal length, is bad input too. */
function compared<Found>(path: string, compare: () => Found): Found {
  try {
    return compare();
  } catch (error) {
    if (error instanceof RangeError)
      throw new CommandProblem(`"${path}" cannot be compared. ${error.message}`);
    throw error;
  }
}
