import { checkFile } from './tools/checkInput';
import { CommandProblem } from './tools/commandProblem';
import { readArguments } from './tools/readArguments';
import { readObserved } from './tools/readObserved';
import { remeasureRecording } from './tools/remeasureRecording';
import { runCommand } from './tools/runCommand';
import { writeJson } from './tools/writeJson';

const usage = 'Usage: npm run -s remeasure -- RECORDING.json (derives its results again)';

await runCommand(async () => {
  const [path, ...more] = readArguments({}, usage).positionals;
  if (path === undefined || more.length > 0)
    throw new CommandProblem(`Give one recording document. ${usage}`);
  checkFile(path);
  const after = remeasureRecording(readObserved(path));
  writeJson(path, after);
  console.log(`${path}: ${after.derived.repetitions.length} repetitions.`);
});
