import { median } from 'd3-array';
import type { PoseModel } from '#core/keypoints/poseModel';
import { deviceWords } from './deviceWords';
import type { Headless } from './openHeadless';

/** How a recorded video compares with the network alone; frames a second, median of the rounds. */
export interface RecordedFigures {
  model: PoseModel;
  frames: number;
  /** From the opened file to the measured numbers. */
  pipelineFps: number;
  /** The network alone, on the same pictures, decoded before at the same size. */
  bareFps: number;
  ratio: number;
  pictureSize: string;
  device: string;
}

const maxFrames = 200;
const rounds = 2;

export async function benchRecorded(
  headless: Headless,
  videoPath: string,
  model: PoseModel,
): Promise<RecordedFigures> {
  const times = await headless.timeRecorded(videoPath, { model, maxFrames, rounds });
  const pipelineFps = median(times.pipelineFps)!;
  const bareFps = median(times.bareFps)!;
  return {
    model,
    frames: times.frames,
    pipelineFps,
    bareFps,
    ratio: pipelineFps / bareFps,
    pictureSize: `${times.widthPx}x${times.heightPx}`,
    device: deviceWords(times.device),
  };
}
