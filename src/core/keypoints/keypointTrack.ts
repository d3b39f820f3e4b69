import { keypointCount } from './keypointNames';

/**
 * What the pose network saw, untouched: one row of 33 points a frame.
 *
 * Frame: picture px as displayed (after rotation), x right, y down.
 */
export interface KeypointTrack {
  /** Picture size as displayed, px. */
  readonly widthPx: number;
  readonly heightPx: number;
  /** Presentation time of each frame, ms from the start of the video, strictly increasing; length frames. */
  readonly timesMs: Float64Array;
  /** px; row-major, frame * 33 + point. 0 where no person was found. */
  readonly xPx: Float32Array;
  readonly yPx: Float32Array;
  /** The network's own confidence, 0 to 1; 0 in a frame without a person. */
  readonly score: Float32Array;
  /** Which frames a second network saw as well; left out where none was looked at more closely. */
  readonly closer?: CloserExtent;
  /** Whether the points are the joints themselves, as from motion capture, and not a network's marks. */
  readonly isExact?: boolean;
}

/** Which part of a track was looked at more closely. */
export interface CloserExtent {
  network: 'MoveNet Thunder';
  /** How many frames. */
  frames: number;
  /** Time of the last of them, ms; what came later was seen once only. */
  untilMs: number;
}

/** Number of frames in a track. */
export function frameCount(track: KeypointTrack): number {
  return track.timesMs.length;
}

/** A frame's points as the tracker returns them: x, y (px) and score of 33 points, interleaved; length 99. */
export type KeypointRow = Float32Array;

/** One frame of a track as a row. */
export function frameRow({ xPx, yPx, score }: KeypointTrack, frame: number): KeypointRow {
  const row = new Float32Array(keypointCount * 3);
  for (let point = 0; point < keypointCount; point++) {
    const at = frame * keypointCount + point;
    row[point * 3] = xPx[at]!;
    row[point * 3 + 1] = yPx[at]!;
    row[point * 3 + 2] = score[at]!;
  }
  return row;
}

/** Some frames of a track, from one up to but not including another; shares the track's memory. */
export function trackPart(track: KeypointTrack, from: number, to = frameCount(track)): KeypointTrack {
  const points = (values: Float32Array) => values.subarray(from * keypointCount, to * keypointCount);
  return {
    ...track,
    timesMs: track.timesMs.subarray(from, to),
    xPx: points(track.xPx),
    yPx: points(track.yPx),
    score: points(track.score),
  };
}

/** What the tracker saw in one frame; null where no person was found. */
export interface TimedRow {
  /** Presentation time, ms from the start of the video. */
  timeMs: number;
  row: KeypointRow | null;
}

/**
 * Joins rows as they come from the tracker into one track.
 *
 * @param rows  one entry a frame; a point for which the network gives no number (as graphics hardware
 *   occasionally does) stays at 0 with score 0, unseen
 * @throws RangeError where times do not increase or a row has the wrong length
 */
export function buildKeypointTrack(
  widthPx: number,
  heightPx: number,
  rows: readonly TimedRow[],
): KeypointTrack {
  const size = rows.length * keypointCount;
  const track = {
    widthPx,
    heightPx,
    timesMs: new Float64Array(rows.length),
    xPx: new Float32Array(size),
    yPx: new Float32Array(size),
    score: new Float32Array(size),
  };
  rows.forEach(({ timeMs, row }, frame) => {
    const previousMs = track.timesMs[frame - 1];
    if (previousMs !== undefined && !(timeMs > previousMs)) {
      throw new RangeError(`Frame times must increase: ${previousMs} ms is followed by ${timeMs} ms.`);
    }
    track.timesMs[frame] = timeMs;
    if (row === null) return;
    if (row.length !== keypointCount * 3) {
      throw new RangeError(`A frame needs ${keypointCount * 3} values, got ${row.length}.`);
    }
    for (let point = 0; point < keypointCount; point++) {
      const at = frame * keypointCount + point;
      const [x, y, score] = [row[point * 3]!, row[point * 3 + 1]!, row[point * 3 + 2]!];
      if (!Number.isFinite(x + y + score)) continue;
      track.xPx[at] = x;
      track.yPx[at] = y;
      track.score[at] = score;
    }
  });
  return track;
}
