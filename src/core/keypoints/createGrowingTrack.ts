import { keypointCount } from './keypointNames';
import { buildKeypointTrack, type KeypointRow, type KeypointTrack } from './keypointTrack';

/** A track that is still being recorded. */
export interface GrowingTrack {
  /**
   * @returns the appended frame as a separate track
   * @throws RangeError where time does not increase or the row has the wrong length
   */
  append(timeMs: number, row: KeypointRow | null): KeypointTrack;
  /** All frames so far, as a view that the next append may outdate. */
  view(): KeypointTrack;
  /** All frames so far, to keep. */
  copy(): KeypointTrack;
}

/** @param widthPx  picture size as displayed, px */
export function createGrowingTrack(widthPx: number, heightPx: number): GrowingTrack {
  let capacity = 512;
  let frames = 0;
  let timesMs = new Float64Array(capacity);
  let points = { xPx: blank(capacity), yPx: blank(capacity), score: blank(capacity) };

  const grow = () => {
    capacity *= 2;
    const moreTimes = new Float64Array(capacity);
    moreTimes.set(timesMs);
    timesMs = moreTimes;
    points = { xPx: longer(points.xPx), yPx: longer(points.yPx), score: longer(points.score) };
  };
  const longer = (values: Float32Array) => {
    const more = blank(capacity);
    more.set(values);
    return more;
  };
  const view = (): KeypointTrack => {
    const size = frames * keypointCount;
    return {
      widthPx,
      heightPx,
      timesMs: timesMs.subarray(0, frames),
      xPx: points.xPx.subarray(0, size),
      yPx: points.yPx.subarray(0, size),
      score: points.score.subarray(0, size),
    };
  };
  return {
    append(timeMs, row) {
      const previousMs = frames === 0 ? -Infinity : timesMs[frames - 1]!;
      if (!(timeMs > previousMs)) {
        throw new RangeError(`Frame times must increase: ${previousMs} ms is followed by ${timeMs} ms.`);
      }
      const frame = buildKeypointTrack(widthPx, heightPx, [{ timeMs, row }]);
      if (frames === capacity) grow();
      timesMs[frames] = timeMs;
      for (const name of ['xPx', 'yPx', 'score'] as const)
        points[name].set(frame[name], frames * keypointCount);
      frames++;
      return frame;
    },
    view,
    copy() {
      const all = view();
      return {
        ...all,
        timesMs: all.timesMs.slice(),
        xPx: all.xPx.slice(),
        yPx: all.yPx.slice(),
        score: all.score.slice(),
      };
    },
  };
}

function blank(frames: number): Float32Array {
  return new Float32Array(frames * keypointCount);
}
