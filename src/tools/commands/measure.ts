import { basename } from 'node:path';
import { taskIds } from '#core/exercises/exercises';
import { defaultPoseModel, poseModels } from '#core/keypoints/poseModel';
import { sides } from '#core/protocol/side';
import { noteSentence } from '#words/noteSentence';
import { checkFile, checkOutput } from './tools/checkInput';
import { CommandProblem } from './tools/commandProblem';
import { createProgressLine } from './tools/createProgressLine';
import { deviceWords } from './tools/deviceWords';
import { openHeadless } from './tools/openHeadless';
import { readArguments } from './tools/readArguments';
import { readChoice } from './tools/readChoice';
import { readHeight } from './tools/readHeight';
import { readLimits } from './tools/readLimits';
import { repetitionTable } from './tools/repetitionTable';
import { runCommand } from './tools/runCommand';
import { writeJson } from './tools/writeJson';

const usage =
  'Usage: npm run -s measure -- VIDEO --task TASK --side left|right ' +
  '[--model lite|full|heavy] [--limit knee=10] [--height CM] [--json OUT]';

await runCommand(async () => {
  const { values, positionals } = readArguments(
    {
      task: { type: 'string' },
      side: { type: 'string' },
      model: { type: 'string', default: defaultPoseModel },
      limit: { type: 'string', multiple: true, default: [] },
      height: { type: 'string' },
      json: { type: 'string' },
    },
    usage,
  );
  const [video, ...more] = positionals;
  if (video === undefined) throw new CommandProblem(`The video is missing. ${usage}`);
  if (more.length > 0)
    throw new CommandProblem(`One video at a time, please; "${more[0]}" is too much. ${usage}`);
  const setup = {
    task: readChoice('--task', values.task, taskIds),
    side: readChoice('--side', values.side, sides),
    ...readHeight(values.height),
  };
  const model = readChoice('--model', values.model, poseModels);
  const limits = readLimits(values.limit);
  checkFile(video);
  checkOutput(values.json);

  const progress = createProgressLine(basename(video));
  const headless = await openHeadless(progress.show);
  const measured = await headless
    .measure(video, { setup, limits, model, note: '', look: 'usual' })
    .finally(() => progress.clear())
    .finally(() => headless.close());
  const { recording, notes, shortfall, pipeline } = measured;
  const nobody = notes.find(({ kind }) => kind === 'no-person');
  if (nobody !== undefined) throw new CommandProblem(noteSentence(nobody));

  if (recording.derived.repetitions.length > 0) console.log(repetitionTable(recording));
  for (const note of notes) console.log(noteSentence(note));
  if (shortfall !== null) console.log(shortfall);
  console.log(
    `${pipeline.frames} frames at ${pipeline.framesPerSecond.toFixed(1)} frames a second ` +
      `(model ${model} on ${deviceWords(pipeline.device)}).`,
  );
  if (values.json !== undefined) writeJson(values.json, recording);
});
