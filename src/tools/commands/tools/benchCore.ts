import { readFileSync } from 'node:fs';
import { median } from 'd3-array';
import { keypointCount } from '#core/keypoints/keypointNames';
import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import { measure } from '#core/measurement/measure';
import { parseRecording } from '#documents/recording/parseRecording';
import { recordingTrack } from '#documents/recording/recordingTrack';

/** How long measuring takes once the joints are known, in one thread; medians. */
export interface CoreFigures {
  frames: number;
  ms: number;
  /** Time for ten times the frames over the time for one times. */
  tenfoldRatio: number;
  repetitions: number;
}

/** Ten minutes at 30 frames a second. */
const frames = 18_000;
const rateHz = 30;
const warmUps = 3;
const rounds = 11;

/** @param sessionPath  a recording document whose joints are repeated until there are enough frames */
export function benchCore(recordingPath: string): CoreFigures {
  const recording = parseRecording(readFileSync(recordingPath, 'utf8'));
  const track = recordingTrack(recording);
  const long = repeated(track, frames);
  const short = repeated(track, frames / 10);
  const measured = measure(long, recording.setup);
  for (let i = 0; i < warmUps; i++) measure(short, recording.setup);
  const longMs: number[] = [];
  const shortMs: number[] = [];
  for (let round = 0; round < rounds; round++) {
    longMs.push(timed(() => measure(long, recording.setup)));
    shortMs.push(timed(() => measure(short, recording.setup)));
  }
  const ms = median(longMs)!;
  return { frames, ms, tenfoldRatio: ms / median(shortMs)!, repetitions: measured.repetitions.length };
}

function timed(run: () => void): number {
  const startMs = performance.now();
  run();
  return performance.now() - startMs;
}

/** The joints over and over, at an even rate. */
function repeated(
  { widthPx, heightPx, timesMs, xPx, yPx, score }: KeypointTrack,
  count: number,
): KeypointTrack {
  const again = (values: Float32Array) =>
    Float32Array.from({ length: count * keypointCount }, (_, i) => values[i % values.length]!);
  return {
    widthPx,
    heightPx,
    timesMs: Float64Array.from({ length: count }, (_, i) => timesMs[0]! + (i * 1000) / rateHz),
    xPx: again(xPx),
    yPx: again(yPx),
    score: again(score),
  };
}
