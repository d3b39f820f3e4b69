import { describe, expect, it } from 'vitest';
import { frameLeg, rowLeg } from '#core/keypoints/frameLeg';
import { keypointCount } from '#core/keypoints/keypointNames';
import { smallTrack } from '../../../support/smallTrack';

describe('frameLeg(track, frame, side)', () => {
  const track = smallTrack([
    { left_knee: [210, 330], right_knee: [110, 320], right_ankle: [111, 500, 0.2] },
    null,
  ]);

  it('gives the joints of the wanted leg', () => {
    expect(frameLeg(track, 0, 'left').knee).toEqual({ x: 210, y: 330 });
    expect(frameLeg(track, 0, 'right').knee).toEqual({ x: 110, y: 320 });
  });

  it('leaves out joints seen too poorly, and all of them where there is no person or frame', () => {
    expect(frameLeg(track, 0, 'right').ankle).toBeNull();
    const nothing = { hip: null, knee: null, ankle: null, heel: null, toe: null };
    expect(frameLeg(track, 1, 'left')).toEqual(nothing);
    expect(frameLeg(track, -1, 'left')).toEqual(nothing);
    expect(frameLeg(track, 2, 'left')).toEqual(nothing);
  });
});

describe('rowLeg(row, side)', () => {
  const row = new Float32Array(keypointCount * 3);
  row.set([110, 200, 0.9], 24 * 3); // right hip
  row.set([120, 300, 0.5], 26 * 3); // right knee, at the least confidence that counts
  row.set([130, 400, 0.49], 28 * 3); // right ankle, below it
  row.set([NaN, 410, 0.9], 30 * 3); // right heel, which the network gave no place

  it('gives the joints that were seen well enough and have a place', () => {
    expect(rowLeg(row, 'right')).toEqual({
      hip: { x: 110, y: 200 },
      knee: { x: 120, y: 300 },
      ankle: null,
      heel: null,
      toe: null,
    });
    expect(rowLeg(row, 'left')).toEqual({ hip: null, knee: null, ankle: null, heel: null, toe: null });
  });
});
