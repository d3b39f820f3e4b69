import { readdirSync, readFileSync } from 'node:fs';
import { extname, join } from 'node:path';
import { defaultPoseModel, poseModels, type PoseModel } from '../keypoints/poseModel';
import { defaultLimits } from '../protocol/limits';
import { cameraGroup, cameraGroups, cameraGroupWords } from '../validation/cameraGroup';
import { parseClipTruth, type ClipTruth } from '../validation/clipTruth';
import { compareClip, comparedLimitDeg } from '../validation/compareClip';
import { summarise } from '../validation/summarise';
import { checkFolder, checkOutput } from './tools/checkInput';
import { CommandProblem } from './tools/commandProblem';
import { createProgressLine } from './tools/createProgressLine';
import { openHeadless, type Headless } from './tools/openHeadless';
import { readArguments } from './tools/readArguments';
import { readChoice } from './tools/readChoice';
import { runCommand } from './tools/runCommand';
import type { ValidatedClip } from './tools/validatedClip';
import { clipTable, summaryTable, timingTable } from './tools/validationTables';
import { writeJson } from './tools/writeJson';

const usage = 'Usage: npm run -s validate -- FOLDER [--model lite|full|heavy] [--json OUT]';
const videoEndings = new Set(['.mp4', '.m4v', '.mov', '.webm', '.mkv']);

await runCommand(async () => {
  const { values, positionals } = readArguments(
    { model: { type: 'string', default: defaultPoseModel }, json: { type: 'string' } },
    usage,
  );
  const [folder, ...more] = positionals;
  if (folder === undefined) throw new CommandProblem(`The folder is missing. ${usage}`);
  if (more.length > 0)
    throw new CommandProblem(`One folder at a time, please; "${more[0]}" is too much. ${usage}`);
  const model = readChoice('--model', values.model, poseModels);
  checkFolder(folder);
  checkOutput(values.json);
  const found = findClips(folder);

  const headless = await openHeadless((progress) => line.show(progress));
  let line = createProgressLine('');
  const clips: ValidatedClip[] = [];
  try {
    for (const { clip, truth } of found) {
      line = createProgressLine(clip);
      clips.push(await validateClip(headless, folder, clip, truth, model).finally(() => line.clear()));
    }
  } finally {
    await headless.close();
  }

  const groups = Object.fromEntries(
    cameraGroups.map((group) => [
      group,
      summarise(clips.filter(({ camera }) => cameraGroup(camera) === group)),
    ]),
  );
  const summary = { model, limitDeg: comparedLimitDeg, ...summarise(clips), groups };
  console.log(clipTable(clips));
  const rows = cameraGroups.map((group) => [cameraGroupWords[group], groups[group]!] as const);
  console.log(summaryTable([['all', summary], ...rows.filter(([, { clips: count }]) => count > 0)]));
  console.log(timingTable(summary));
  if (values.json !== undefined) writeJson(values.json, { clips, summary }, 1);
});

interface FoundClip {
  clip: string;
  truth: ClipTruth;
}

/** Clips with a truth beside them, by name; the others are named on the way. */
function findClips(folder: string): FoundClip[] {
  const names = readdirSync(folder).sort();
  const clips: FoundClip[] = [];
  for (const clip of names.filter((name) => videoEndings.has(extname(name).toLowerCase()))) {
    const truthName = `${clip.slice(0, -extname(clip).length)}.truth.json`;
    if (!names.includes(truthName)) {
      console.log(`${clip} is skipped: there is no ${truthName} beside it.`);
      continue;
    }
    const { truth, problem } = parseClipTruth(readFileSync(join(folder, truthName), 'utf8'));
    if (truth === null) console.log(`${clip} is skipped: ${truthName} can't be read (${problem}).`);
    else clips.push({ clip, truth });
  }
  if (clips.length > 0) return clips;
  throw new CommandProblem(
    `"${folder}" holds no video with a .truth.json beside it. Give the folder with the clips.`,
  );
}

async function validateClip(
  headless: Headless,
  folder: string,
  clip: string,
  truth: ClipTruth,
  model: PoseModel,
): Promise<ValidatedClip> {
  const { task, side, camera } = truth;
  const limits = { ...defaultLimits, kneeInwardDeg: comparedLimitDeg };
  const about = { clip, camera: { yawDeg: camera.yawDeg, rollDeg: camera.rollDeg } };
  try {
    const request = { setup: { task, side }, limits, model, note: '' };
    const { session, pipeline } = await headless.measure(join(folder, clip), request);
    const compared = compareClip(truth, session.derived);
    const { timingMaeS } = summarise([compared]);
    return { ...about, ...compared, problem: null, timingMaeS, framesPerSecond: pipeline.framesPerSecond };
  } catch (error) {
    if (!(error instanceof CommandProblem)) throw error;
    const nothing = compareClip(truth, null);
    return { ...about, ...nothing, problem: error.message, timingMaeS: null, framesPerSecond: null };
  }
}
