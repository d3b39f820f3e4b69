import { countInLine } from '#core/chance/countInLine';
import { CommandProblem } from './tools/commandProblem';
import { readArguments } from './tools/readArguments';
import { readSet } from './tools/readSet';
import { runCommand } from './tools/runCommand';

const usage =
  'Usage: npm run -s set-verdict -- FILE.json   (FILE.json holds {repetitions: [{inwardDeg, outwardDeg?}], ' +
  'limits: {inwardDeg, outwardDeg?}, sharedSdDeg, ownSdDeg: [..]}; outward angles are negative)';

await runCommand(async () => {
  const [path, ...more] = readArguments({}, usage).positionals;
  if (path === undefined) throw new CommandProblem(`The file is missing. ${usage}`);
  if (more.length > 0)
    throw new CommandProblem(`One file at a time, please; "${more[0]}" is too much. ${usage}`);
  const { repetitions, limits, errors } = readSet(path);
  const { expected, low, high, mode, chancesInLine } = countInLine(repetitions, limits, errors);
  console.log(JSON.stringify({ expected, low, high, mode, chancesInLine }));
});
