import { describe, expect, it } from 'vitest';
import { correctTrack, fadeMs } from '#core/correction/correctTrack';
import { mirrorTrack } from '#core/correction/mirrorTrack';
import { keypointCount, keypointNames } from '#core/keypoints/keypointNames';
import type { KeypointTrack } from '#core/keypoints/keypointTrack';

const frames = 30;
const knee = keypointNames.indexOf('left_knee');
/** Every point stands still at (100, 200) in a picture of 400 x 800, 25 frames a second. */
function still(): KeypointTrack {
  const size = frames * keypointCount;
  return {
    widthPx: 400,
    heightPx: 800,
    timesMs: Float64Array.from({ length: frames }, (_, i) => i * 40),
    xPx: new Float32Array(size).fill(100),
    yPx: new Float32Array(size).fill(200),
    score: new Float32Array(size).fill(0.8),
  };
}
const move = (frame: number, xNorm: number) =>
  ({ kind: 'move-point', timeMs: frame * 40, point: 'left_knee', xNorm, yNorm: 0.25 }) as const;
const kneeX = (track: KeypointTrack, frame: number) => track.xPx[frame * keypointCount + knee]!;

describe('correctTrack(track, settled)', () => {
  it('gives back the same track where nothing is to be corrected', () => {
    const track = still();
    expect(correctTrack(track, { points: [], isMirrored: false })).toBe(track);
  });

  it('goes in a straight line between corrected frames and fades out beside them', () => {
    const track = still();
    const { xPx, ...rest } = correctTrack(track, {
      points: [move(10, 0.3), move(20, 0.4)],
      isMirrored: false,
    });
    const corrected = { xPx, ...rest };
    // 0.3 * 400 = 120 px and 0.4 * 400 = 160 px; half-way 140 px.
    expect([10, 15, 20].map((frame) => kneeX(corrected, frame))).toEqual(
      [120, 140, 160].map((x) => expect.closeTo(x, 3)),
    );
    // Two frames of 40 ms before the first: 80 of 200 ms are gone, so 60 % of 20 px are left.
    expect(kneeX(corrected, 8)).toBeCloseTo(112, 3);
    expect(kneeX(corrected, 10 - fadeMs / 40)).toBe(100);
    expect(kneeX(corrected, 29)).toBe(100);
    expect(kneeX(track, 10)).toBe(100);
    expect(corrected.xPx[10 * keypointCount + knee + 1]).toBe(100);
  });

  it('does not bridge corrected frames that lie more than a second apart', () => {
    const corrected = correctTrack(still(), { points: [move(1, 0.5), move(28, 0.5)], isMirrored: false });
    expect(kneeX(corrected, 14)).toBe(100);
  });

  it('leaves a frame without a person as it is', () => {
    const track = still();
    track.score.fill(0, 12 * keypointCount, 13 * keypointCount);
    const corrected = correctTrack(track, { points: [move(10, 0.3), move(14, 0.3)], isMirrored: false });
    expect(kneeX(corrected, 12)).toBe(100);
    expect(corrected.score[12 * keypointCount + knee]).toBe(0);
  });

  it('mirrors places and swaps sides, and twice gives the same', () => {
    const track = still();
    track.xPx[knee] = 30;
    const mirrored = correctTrack(track, { points: [], isMirrored: true });
    expect(mirrored.xPx[keypointNames.indexOf('right_knee')]).toBe(370);
    expect(mirrorTrack(mirrored)).toEqual(track);
  });
});
