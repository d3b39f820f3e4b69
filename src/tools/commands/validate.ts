import { readdirSync } from 'node:fs';
import { extname, join } from 'node:path';
import { taskIds } from '#core/exercises/exercises';
import { defaultPoseModel, poseModels, type PoseModel } from '#core/keypoints/poseModel';
import { defaultLimits, withLimit } from '#core/protocol/limits';
import { yawReadings } from '#core/view/closerBand';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { chancesHeld } from '#tools/validation/chancesHeld';
import { lookNames, type LookName, type PlainLook } from '../headless/headlessPage';
import { cameraGroup, cameraGroups, cameraGroupWords } from '../validation/cameraGroup';
import { parseClipTruth, type ClipTruth } from '../validation/clipTruth';
import { compareClip, comparedLimitDeg } from '../validation/compareClip';
import { countHeld, leaveClipsOut } from '../validation/leaveClipsOut';
import { pictureCurve } from '../validation/pictureCurve';
import { summariseClips } from '../validation/summariseClips';
import { checkFolder, checkOutput } from './tools/checkInput';
import { CommandProblem } from './tools/commandProblem';
import { createProgressLine } from './tools/createProgressLine';
import { openHeadless, type Headless } from './tools/openHeadless';
import { readArguments } from './tools/readArguments';
import { readChoice } from './tools/readChoice';
import { readJson } from './tools/readJson';
import { readObserved } from './tools/readObserved';
import { readText } from './tools/readText';
import { remeasureRecording } from './tools/remeasureRecording';
import { runCommand } from './tools/runCommand';
import type { ValidatedClip } from './tools/validatedClip';
import { chanceTable, clipTable, heldTable, summaryTable, timingTable } from './tools/validationTables';
import { withCloserLook } from './tools/withCloserLook';
import { writeJson } from './tools/writeJson';

const usage =
  'Usage: npm run -s validate -- FOLDER [--model lite|full|heavy] [--look closer|along|usual] [--json OUT] ' +
  '[--keep DIR | --from DIR]';
const videoEndings = new Set(['.mp4', '.m4v', '.mov', '.webm', '.mkv']);

await runCommand(async () => {
  const { values, positionals } = readArguments(
    {
      model: { type: 'string', default: defaultPoseModel },
      look: { type: 'string', default: 'closer' },
      json: { type: 'string' },
      keep: { type: 'string' },
      from: { type: 'string' },
    },
    usage,
  );
  const [folder, ...more] = positionals;
  if (folder === undefined) throw new CommandProblem(`The folder is missing. ${usage}`);
  if (more.length > 0)
    throw new CommandProblem(`One folder at a time, please; "${more[0]}" is too much. ${usage}`);
  const model = readChoice('--model', values.model, poseModels);
  const look = readChoice('--look', values.look, lookNames);
  checkFolder(folder);
  checkOutput(values.json);
  if (values.keep !== undefined && values.from !== undefined) {
    throw new CommandProblem('--keep tracks the clips and --from takes what was kept: give one of them.');
  }
  for (const kept of [values.keep, values.from]) if (kept !== undefined) checkFolder(kept);
  const found = findClips(folder, values.from === undefined);

  let line = createProgressLine('');
  const headless = values.from === undefined ? await openHeadless((progress) => line.show(progress)) : null;
  const track: TrackClip =
    headless === null
      ? trackedBefore(values.from!, model, look)
      : trackNow(headless, folder, model, look, values.keep);
  const clips: ValidatedClip[] = [];
  try {
    for (const { clip, truth } of found) {
      line = createProgressLine(clip);
      clips.push(await validateClip(track, clip, truth).finally(() => line.clear()));
    }
  } finally {
    await headless?.close();
  }

  const summary = { model, look, limitDeg: comparedLimitDeg, ...summariseFolder(clips) };
  console.log(clipTable(clips));
  const named = [
    ...cameraGroups.map((group) => ({
      name: cameraGroupWords[group],
      of: summary.groups[group],
      held: summary.bandsLeftOut[group],
    })),
    ...taskIds.map((task) => ({ name: task, of: summary.tasks[task], held: summary.bandsLeftOut[task] })),
  ].filter(({ of }) => of.clips > 0);
  console.log(summaryTable([['all', summary], ...named.map(({ name, of }) => [name, of] as const)]));
  if (summary.bandsLeftOut.all.clips > 0) {
    console.log(
      heldTable([
        ['all', summary.bandsLeftOut.all],
        ...named.map(({ name, held }) => [name, held] as const),
        ['knee off line, all', summary.kneeOffLineLeftOut],
      ]),
    );
    console.log(chanceTable(summary.chancesLeftOut));
  }
  console.log(timingTable(summary));
  if (values.json !== undefined) writeJson(values.json, { clips, summary }, 1);
});

/** Results of all clips, of those of each camera and task, of each way in which the yaw was told, and of bands fitted without them. */
function summariseFolder(clips: readonly ValidatedClip[]) {
  const cameraOf = ({ camera }: ValidatedClip) => cameraGroup(camera);
  const leftOut = leaveClipsOut(clips);
  const heldOf = (chosen: (clip: ValidatedClip) => boolean) =>
    countHeld(leftOut.filter(({ clip }) => chosen(clip)));
  return {
    ...summariseClips(clips),
    groups: eachOf(cameraGroups, (group) => summariseClips(clips.filter((clip) => cameraOf(clip) === group))),
    tasks: eachOf(taskIds, (id) => summariseClips(clips.filter(({ task }) => task === id))),
    yawReadings: eachOf(yawReadings, (reading) =>
      summariseClips(clips.filter(({ yawReading }) => yawReading === reading)),
    ),
    bandsLeftOut: {
      all: heldOf(() => true),
      ...eachOf(cameraGroups, (group) => heldOf((clip) => cameraOf(clip) === group)),
      ...eachOf(taskIds, (id) => heldOf(({ task }) => task === id)),
    },
    chancesLeftOut: chancesHeld(leftOut),
    kneeOffLineLeftOut: countHeld(leaveClipsOut(clips, 'knee-off-line')),
  };
}

function eachOf<Name extends string, Value>(names: readonly Name[], of: (name: Name) => Value) {
  return Object.fromEntries(names.map((name) => [name, of(name)])) as Record<Name, Value>;
}

interface FoundClip {
  clip: string;
  truth: ClipTruth;
}

/**
 * Clips with a truth file next to them, by name; the others are listed while searching.
 *
 * @param needsVideo  whether the clips themselves have to be there
 */
function findClips(folder: string, needsVideo: boolean): FoundClip[] {
  const names = readdirSync(folder).sort();
  const withTruth = (clip: string) =>
    names.some((name) => name === `${nameOf(clip)}.truth.json` || name === `${nameOf(clip)}.truth.json.gz`);
  const all = needsVideo
    ? names.filter((name) => videoEndings.has(extname(name).toLowerCase()))
    : names.flatMap((name) => /^(.+)\.truth\.json(\.gz)?$/.exec(name)?.[1] ?? []);
  const clips: FoundClip[] = [];
  for (const clip of all) {
    const truthName = `${nameOf(clip)}.truth.json`;
    if (!withTruth(clip)) {
      console.log(`${clip} is skipped: there is no ${truthName} next to it.`);
      continue;
    }
    const { truth, problem } = parseClipTruth(readText(join(folder, truthName)));
    if (truth === null) console.log(`${clip} is skipped: ${truthName} can't be read (${problem}).`);
    else clips.push({ clip, truth });
  }
  if (clips.length > 0) return clips;
  throw new CommandProblem(
    `"${folder}" holds no video with a .truth.json next to it. Give the folder with the clips.`,
  );
}

/** A clip's name without its ending. */
function nameOf(clip: string): string {
  const ending = extname(clip).toLowerCase();
  return videoEndings.has(ending) ? clip.slice(0, -ending.length) : clip;
}

interface TrackedClip {
  recording: RecordingDocument;
  /** Null where the joints were tracked before. */
  framesPerSecond: number | null;
  /** How long the whole took, over the usual look alone; null where the joints were tracked before. */
  wholeRatio: number | null;
}

type TrackClip = (clip: string, truth: ClipTruth) => Promise<TrackedClip>;

/** Tracks a clip in the browser; with an output folder, what was seen is saved there. */
function trackNow(
  headless: Headless,
  folder: string,
  model: PoseModel,
  look: LookName,
  keep: string | undefined,
): TrackClip {
  return async (clip, { task, side }) => {
    const limits = withLimit(defaultLimits, 'knee-angle', 'most', comparedLimitDeg);
    const request = { setup: { task, side }, limits, model, note: '', look };
    const { recording, closer, pipeline } = await headless.measure(join(folder, clip), request);
    const framesPerSecond = pipeline.framesPerSecond;
    if (keep !== undefined) {
      writeJson(join(keep, keptName(clip, model, 'session')), recording);
      if (closer !== null) writeJson(join(keep, keptName(clip, model, 'looks')), closer.looks);
    }
    return {
      recording: closer === null ? recording : withCloserLook(recording, closer.looks),
      framesPerSecond,
      wholeRatio: closer === null ? null : 1 + (closer.seconds * framesPerSecond) / pipeline.frames,
    };
  };
}

/** Takes the joints from what was saved and measures them again: seconds instead of minutes. */
function trackedBefore(folder: string, model: PoseModel, look: LookName): TrackClip {
  return (clip) => {
    const recording = readObserved(join(folder, keptName(clip, model, 'session')));
    return Promise.resolve({
      recording:
        look !== 'usual'
          ? withCloserLook(
              recording,
              readJson(join(folder, keptName(clip, model, 'looks')), 'what --keep wrote') as PlainLook[],
            )
          : remeasureRecording(recording),
      framesPerSecond: null,
      wholeRatio: null,
    });
  };
}

function keptName(clip: string, model: PoseModel, what: 'session' | 'looks'): string {
  return `${nameOf(clip)}.${model}.${what}.json`;
}

async function validateClip(track: TrackClip, clip: string, truth: ClipTruth): Promise<ValidatedClip> {
  const { yawDeg, rollDeg } = truth.camera;
  const about = { clip, task: truth.task, camera: { yawDeg, rollDeg } };
  try {
    const { recording, framesPerSecond, wholeRatio } = await track(clip, truth);
    const compared = compareClip(truth, recording.derived, pictureCurve(recording));
    const { timingMaeS } = summariseClips([compared]);
    return { ...about, ...compared, problem: null, timingMaeS, framesPerSecond, wholeRatio };
  } catch (error) {
    if (!(error instanceof CommandProblem)) throw error;
    const nothing = compareClip(truth, null);
    return {
      ...about,
      ...nothing,
      problem: error.message,
      timingMaeS: null,
      framesPerSecond: null,
      wholeRatio: null,
    };
  }
}
