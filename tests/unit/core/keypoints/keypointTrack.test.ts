import { describe, expect, it } from 'vitest';
import { keypointCount, keypointNames } from '#core/keypoints/keypointNames';
import { buildKeypointTrack, frameCount } from '#core/keypoints/keypointTrack';

const rowFrom = (first: number) => Float32Array.from({ length: keypointCount * 3 }, (_, i) => first + i);

describe('keypointNames', () => {
  it('names 33 different points', () => {
    expect(keypointCount).toBe(33);
    expect(new Set(keypointNames).size).toBe(33);
  });

  it('keeps the order of the pose network', () => {
    // Order of BlazePose GHUM as published with the model: 0 nose, 11/12 shoulders, 23/24 hips, 25/26 knees, 27/28 ankles.
    expect([0, 11, 12, 23, 24, 25, 26, 27, 28, 31, 32].map((i) => keypointNames[i])).toEqual([
      'nose',
      'left_shoulder',
      'right_shoulder',
      'left_hip',
      'right_hip',
      'left_knee',
      'right_knee',
      'left_ankle',
      'right_ankle',
      'left_foot_index',
      'right_foot_index',
    ]);
  });
});

describe('buildKeypointTrack(widthPx, heightPx, rows)', () => {
  it('splits interleaved rows, frame by frame', () => {
    const track = buildKeypointTrack(640, 480, [
      { timeMs: 5, row: rowFrom(100) },
      { timeMs: 45, row: rowFrom(500) },
    ]);
    expect(frameCount(track)).toBe(2);
    expect(track).toMatchObject({ widthPx: 640, heightPx: 480 });
    expect(Array.from(track.timesMs)).toEqual([5, 45]);
    // Point 2 of frame 0 starts at 100 + 2 x 3; point 32 of frame 1 at 500 + 32 x 3.
    expect([track.xPx[2], track.yPx[2], track.score[2]]).toEqual([106, 107, 108]);
    const last = 33 + 32;
    expect([track.xPx[last], track.yPx[last], track.score[last]]).toEqual([596, 597, 598]);
  });

  it('leaves a frame without a person at 0', () => {
    const track = buildKeypointTrack(640, 480, [
      { timeMs: 0, row: null },
      { timeMs: 33, row: rowFrom(7) },
    ]);
    expect(Array.from(track.score.subarray(0, 33))).toEqual(new Array(33).fill(0));
    expect(track.xPx[33]).toBe(7);
  });

  it('treats a point that is not a number as unseen, and keeps the others', () => {
    const row = rowFrom(1);
    row[5 * 3 + 1] = NaN;
    row[6 * 3] = Infinity;
    const track = buildKeypointTrack(640, 480, [{ timeMs: 0, row }]);
    expect([track.xPx[5], track.yPx[5], track.score[5], track.score[6]]).toEqual([0, 0, 0, 0]);
    // Point 7 starts at 1 + 7 x 3.
    expect([track.xPx[7], track.yPx[7], track.score[7]]).toEqual([22, 23, 24]);
  });

  it('gives an empty track for no rows', () => {
    expect(frameCount(buildKeypointTrack(640, 480, []))).toBe(0);
  });

  it.each([
    [40, 40],
    [40, 12],
    [40, NaN],
  ])('refuses a frame at %d ms that is followed by one at %d ms', (firstMs, secondMs) => {
    const rows = [firstMs, secondMs].map((timeMs) => ({ timeMs, row: null }));
    expect(() => buildKeypointTrack(640, 480, rows)).toThrow(
      new RangeError(`Frame times must increase: ${firstMs} ms is followed by ${secondMs} ms.`),
    );
  });

  it('refuses a row of another length', () => {
    expect(() => buildKeypointTrack(640, 480, [{ timeMs: 0, row: new Float32Array(98) }])).toThrow(
      new RangeError('A frame needs 99 values, got 98.'),
    );
  });
});
