import { keypointCount, keypointNames, type KeypointName } from '../keypoints/keypointNames';
import type { KeypointRow, KeypointTrack } from '../keypoints/keypointTrack';

/** The same point on the other side; a midline point is its own counterpart. */
export function otherSidePoint(name: KeypointName): KeypointName {
  const swapped = name.replace(/left|right/, (side) => (side === 'left' ? 'right' : 'left'));
  return swapped as KeypointName;
}

/** The place of each point's counterpart among the points. */
export const otherSidePlaces: readonly number[] = keypointNames.map((name) =>
  keypointNames.indexOf(otherSidePoint(name)),
);

/**
 * What the network would have seen in the picture turned left for right: positions are mirrored, and left and
 * right swap names. Mirroring twice gives the same track, except for rounding.
 */
export function mirrorTrack(track: KeypointTrack): KeypointTrack {
  const size = track.xPx.length;
  const [xPx, yPx, score] = [new Float32Array(size), new Float32Array(size), new Float32Array(size)];
  for (let at = 0; at < size; at++) {
    const point = at % keypointCount;
    const from = at - point + otherSidePlaces[point]!;
    const isSeen = track.score[from]! > 0;
    xPx[at] = isSeen ? track.widthPx - track.xPx[from]! : track.xPx[from]!;
    yPx[at] = track.yPx[from]!;
    score[at] = track.score[from]!;
  }
  return { ...track, xPx, yPx, score };
}

/** Points of a picture's mirror image, as points of the picture itself, and the other way round. */
export function mirrorRow(row: KeypointRow, widthPx: number): KeypointRow {
  const mirrored = new Float32Array(row.length);
  otherSidePlaces.forEach((from, point) => {
    const [x, y, score] = row.subarray(from * 3, from * 3 + 3) as unknown as [number, number, number];
    mirrored.set([widthPx - x, y, score], point * 3);
  });
  return mirrored;
}
