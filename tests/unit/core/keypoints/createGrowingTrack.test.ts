import { describe, expect, it } from 'vitest';
import { createGrowingTrack } from '#core/keypoints/createGrowingTrack';
import { keypointCount } from '#core/keypoints/keypointNames';
import { buildKeypointTrack } from '#core/keypoints/keypointTrack';

const rows = Array.from({ length: 1100 }, (_, frame) => ({
  timeMs: 40 * frame + (frame % 3),
  row:
    frame % 7 === 2
      ? null
      : Float32Array.from({ length: 3 * keypointCount }, (_, i) => (i === 5 ? NaN : frame + i / 200)),
}));

describe('createGrowingTrack(widthPx, heightPx)', () => {
  it('holds the same as a track built at once', () => {
    const track = createGrowingTrack(540, 960);
    rows.forEach(({ timeMs, row }) => track.append(timeMs, row));
    const expected = buildKeypointTrack(540, 960, rows);
    expect(track.view()).toEqual(expected);
    expect(track.copy()).toEqual(expected);
  });

  it('returns single frames, and copies that later frames do not change', () => {
    const track = createGrowingTrack(540, 960);
    expect(track.append(10, rows[1]!.row).xPx[2]).toBeCloseTo(1 + 6 / 200, 5);
    const early = track.copy();
    track.append(20, null);
    expect(early.timesMs).toEqual(Float64Array.of(10));
    expect(track.view().timesMs).toEqual(Float64Array.of(10, 20));
  });

  it('throws where time does not increase', () => {
    const track = createGrowingTrack(540, 960);
    track.append(10, null);
    expect(() => track.append(10, null)).toThrow('Frame times must increase: 10 ms is followed by 10 ms.');
  });
});
