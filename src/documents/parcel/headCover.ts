import { bisectLeft } from 'd3-array';
import { keypointCount, keypointNames, type KeypointName } from '#core/keypoints/keypointNames';
import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import { quantileOf } from '#core/signal/quantileOf';
import type { PictureCover } from './videoPart';

/** Points of the head: nose, eyes, ears and mouth come first in the network's order. */
const headPoints = keypointNames.indexOf('left_shoulder');
const [leftShoulder, rightShoulder] = (['left_shoulder', 'right_shoulder'] as const).map(
  (name: KeypointName) => keypointNames.indexOf(name),
) as [number, number];

/**
 * Below the lowest point of the head as much again is covered, in shoulder breadths. From mouth to chin is about a quarter
 * of a head's height, and a head about half as high as shoulders are broad (Drillis & Contini 1966: 0.130 and 0.259 of body
 * height): an eighth, doubled for what the network misses.
 */
const belowHead = 0.25;
/** Shoulders turned away look narrower than they are: one of the broadest views counts. */
const broadShare = 0.9;
/** The cover of a frame also holds for this long before and after it, ms: for a nod, or a point that lags behind. */
const aroundMs = 300;
/** A picture farther from the nearest frame with joints than this is covered whole, ms. */
const mostApartMs = 150;

/**
 * A cover from the top of the picture down to the shoulders, and lower where the head is held lower.
 *
 * Frame:   picture px as displayed, y down
 * @returns  Infinity, which is the whole picture, where nobody was seen in the frame nearest to it, or none is near
 */
export function headCover({ timesMs, xPx, yPx, score }: KeypointTrack): PictureCover {
  const at = (frame: number, point: number) => frame * keypointCount + point;
  const isSeen = (frame: number) => score.subarray(at(frame, 0), at(frame + 1, 0)).some((value) => value > 0);
  const breadthPx = (frame: number) => {
    const [left, right] = [at(frame, leftShoulder), at(frame, rightShoulder)];
    return Math.hypot(xPx[left]! - xPx[right]!, yPx[left]! - yPx[right]!);
  };
  const frames = Array.from(timesMs.keys());
  const usualPx = quantileOf(frames.filter(isSeen).map(breadthPx), broadShare) ?? 0;
  const lowestPx = frames.map((frame) => {
    if (!isSeen(frame)) return null;
    const head = Math.max(...yPx.subarray(at(frame, 0), at(frame, headPoints)));
    const shoulders = Math.min(yPx[at(frame, leftShoulder)]!, yPx[at(frame, rightShoulder)]!);
    // Anyone who comes close to the camera looks larger than usual.
    return Math.max(head + belowHead * Math.max(usualPx, breadthPx(frame)), shoulders);
  });

  return (timeMs) => {
    const next = bisectLeft(timesMs, timeMs);
    const apartMs = (frame: number) => Math.abs((timesMs[frame] ?? Infinity) - timeMs);
    const nearest = apartMs(next - 1) <= apartMs(next) ? next - 1 : next;
    if (apartMs(nearest) > mostApartMs || (lowestPx[nearest] ?? null) === null) return Infinity;
    const [from, to] = [bisectLeft(timesMs, timeMs - aroundMs), bisectLeft(timesMs, timeMs + aroundMs)];
    return Math.max(0, ...lowestPx.slice(from, to + 1).map((line) => line ?? 0));
  };
}
