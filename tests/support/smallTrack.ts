import { keypointCount, keypointNames, type KeypointName } from '#core/keypoints/keypointNames';
import { buildKeypointTrack, type KeypointTrack } from '#core/keypoints/keypointTrack';

/** One frame by hand: the given points are where given, all others at (50, 60) with score 0.9; null = nobody. */
export type SmallFrame = Partial<Record<KeypointName, [xPx: number, yPx: number, score?: number]>> | null;

/** A track of a few frames of 400 x 700 px, 40 ms apart where no times are given. */
export function smallTrack(frames: readonly SmallFrame[], timesMs?: readonly number[]): KeypointTrack {
  const rows = frames.map((frame, index) => {
    const timeMs = timesMs?.[index] ?? 40 * index;
    if (frame === null) return { timeMs, row: null };
    const row = new Float32Array(keypointCount * 3);
    keypointNames.forEach((name, point) => {
      const [xPx, yPx, score = 0.9] = frame[name] ?? [50, 60];
      row.set([xPx, yPx, score], point * 3);
    });
    return { timeMs, row };
  });
  return buildKeypointTrack(400, 700, rows);
}
