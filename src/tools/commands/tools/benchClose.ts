import { median } from 'd3-array';
import type { PoseModel } from '#core/keypoints/poseModel';
import type { CloserTimes } from '../../headless/headlessPage';
import { CommandProblem } from './commandProblem';
import { deviceWords } from './deviceWords';
import type { Headless } from './openHeadless';

/** What a closer look costs where a recorded video is opened; medians of the rounds' own ratios. */
export interface CloseFigures {
  model: PoseModel;
  frames: number;
  /** Frames that were looked at again. */
  looked: number;
  /**
   * From opening the file to the first numbers, a closer look still to come, over a pass by itself in which no second
   * network was ever loaded: about 1 where the first answer comes as fast as without a closer look. In the first round
   * the second network is not loaded yet, and in the others it is, as for a second video.
   */
  firstAnswerRatio: number;
  /** Each round's: far apart where the device was busy with something else, and then the median says little. */
  firstAnswerRatios: string;
  /** From opening the file to the numbers after the closer look, over the time to the first ones. */
  wholeRatio: number;
  wholeRatios: string;
  device: string;
}

const rounds = 3;

/** @param videoPath  a clip of split-stance sit-to-stands of the right leg */
export async function benchClose(
  headless: Headless,
  videoPath: string,
  model: PoseModel,
): Promise<CloseFigures> {
  return closeFigures(await headless.timeCloser(videoPath, { model, rounds }), model);
}

/** @throws CommandProblem  where no frame was looked at again */
export function closeFigures(
  { frames, looked, plainMs, firstMs, wholeMs, device }: CloserTimes,
  model: PoseModel,
): CloseFigures {
  if (looked === 0) throw new CommandProblem('No frame was looked at again.');
  const firstRatios = firstMs.map((ms, round) => ms / plainMs[round]!);
  const wholeRatios = wholeMs.map((ms, round) => ms / firstMs[round]!);
  return {
    model,
    frames,
    looked,
    firstAnswerRatio: median(firstRatios)!,
    firstAnswerRatios: inWords(firstRatios),
    wholeRatio: median(wholeRatios)!,
    wholeRatios: inWords(wholeRatios),
    device: deviceWords(device),
  };
}

function inWords(ratios: readonly number[]): string {
  return ratios.map((ratio) => ratio.toFixed(2)).join(', ');
}
