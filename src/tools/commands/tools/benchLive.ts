import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { median } from 'd3-array';
import type { PoseModel } from '#core/keypoints/poseModel';
import { defaultLimits } from '#core/protocol/limits';
import type { LiveRun } from '../../headless/headlessPage';
import { cameraSwitches } from './cameraSwitches';
import { CommandProblem } from './commandProblem';
import { deviceWords } from './deviceWords';
import { openHeadless, type Headless } from './openHeadless';

/** Performance of counting along with a camera; medians of the rounds. */
export interface LiveFigures {
  model: PoseModel;
  /** Pictures a second that the live loop tracks. */
  appFps: number;
  /** The same for the network alone on pictures captured from the camera beforehand, while the camera still runs. */
  bareFps: number;
  /** Median of the rounds' own ratios. The camera's frame rate is the upper bound. */
  ratio: number;
  /** Longest task of the page's main thread while live. */
  longestTaskMs: number;
  /**
   * From a repetition's end, as the review finds it, to the page receiving the count; below 0 where the count
   * came first.
   */
  countDelayMs: number;
  /** The slowest of all counts. */
  countDelayMaxMs: number;
  cameraFps: number;
  /** Repetitions counted live and found by the review in the same frames, in all rounds. */
  counted: number;
  reviewed: number;
  cameraSize: string;
  device: string;
}

const rounds = 3;
/** One time through the clip, ms. */
const forMs = 24_500;
const bareFrames = 120;

/** @param clipPath  a clip of split-stance sit-to-stands of the right leg, shown as the browser's camera */
export async function benchLive(
  headless: Headless,
  clipPath: string,
  model: PoseModel,
): Promise<LiveFigures> {
  const folder = mkdtempSync(join(tmpdir(), 'overfoot-camera-'));
  try {
    const picturesPath = join(folder, 'camera.mjpeg');
    await headless.writeCameraFile(clipPath, picturesPath);
    const filmed = await openHeadless(undefined, cameraSwitches(picturesPath));
    const setup = { task: 'split-stance-sit-to-stand', side: 'right' } as const;
    const runs: Awaited<ReturnType<Headless['runLive']>>[] = [];
    try {
      for (let round = 0; round < rounds; round++)
        runs.push(
          await filmed.runLive({ setup, limits: defaultLimits, model, forMs, awaitVerdicts: 0, bareFrames }),
        );
    } finally {
      await filmed.close();
    }
    return figuresOf(runs, model);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function figuresOf(runs: readonly (LiveRun & { longestTaskMs: number })[], model: PoseModel): LiveFigures {
  const [first] = runs;
  const delaysMs = runs.flatMap(countDelaysMs);
  if (first === undefined || delaysMs.length === 0) throw new CommandProblem('Nothing was counted live.');
  const middle = (of: (run: (typeof runs)[number]) => number) => median(runs, of)!;
  const sum = (of: (run: LiveRun) => number) => runs.reduce((total, run) => total + of(run), 0);
  return {
    model,
    appFps: middle(({ liveFps }) => liveFps),
    bareFps: middle(({ bareFps }) => bareFps!),
    ratio: middle(({ liveFps, bareFps, cameraFps }) => liveFps / Math.min(bareFps!, cameraFps)),
    longestTaskMs: middle(({ longestTaskMs }) => longestTaskMs),
    countDelayMs: median(delaysMs)!,
    countDelayMaxMs: Math.max(...delaysMs),
    cameraFps: middle(({ cameraFps }) => cameraFps),
    counted: sum(({ counts }) => counts.at(-1)?.count ?? 0),
    reviewed: sum(({ reviewedCount }) => reviewedCount),
    cameraSize: `${first.widthPx}x${first.heightPx}`,
    device: deviceWords(first.device),
  };
}

/** How long after each repetition's end its count was reported, for repetitions that the review finds too. */
export function countDelaysMs({
  counts,
  reviewedEndsMs,
}: Pick<LiveRun, 'counts' | 'reviewedEndsMs'>): number[] {
  return reviewedEndsMs.flatMap((endMs, index) => {
    const told = counts.find(({ count }) => count > index);
    return told === undefined ? [] : told.atMs - endMs;
  });
}
