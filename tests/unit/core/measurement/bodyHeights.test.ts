import { describe, expect, it } from 'vitest';
import { bodyHeights } from '#core/measurement/bodyHeights';
import { smoothPoints } from '#core/measurement/smoothPoints';
import { smallTrack, type SmallFrame } from '../../../support/smallTrack';

/** Hips at 400 and 410 px, shoulders at 200 and 206: in the middle 405 and 203. */
const still: SmallFrame = {
  left_hip: [220, 400],
  right_hip: [180, 410],
  left_shoulder: [240, 200],
  right_shoulder: [160, 206],
};
const frames = (...of: SmallFrame[]) => of.flatMap((frame) => new Array<SmallFrame>(10).fill(frame));

describe('bodyHeights(points, legLengthPx)', () => {
  it('gives the middle of hips and shoulders in leg lengths, upwards positive', () => {
    const { hips, shoulders } = bodyHeights(smoothPoints(smallTrack(frames(still))), 500);
    expect(hips[5]).toBeCloseTo(-405 / 500, 6);
    expect(shoulders[5]).toBeCloseTo(-203 / 500, 6);
  });

  it('infers the size from the trunk where no leg was seen, by the proportions of Drillis & Contini', () => {
    // Thigh .245 and shank .246 over a trunk of .288 are 1.705; the trunk is 405 - 203 = 202 px.
    const { hips } = bodyHeights(smoothPoints(smallTrack(frames(still))), null);
    expect(Math.abs(hips[5]! + 405 / (((0.245 + 0.246) / 0.288) * 202))).toBeLessThan(0.01);
  });

  it('keeps the last height while a hip is unseen, and uses the first one before that', () => {
    const lower: SmallFrame = { ...still, left_hip: [220, 450], right_hip: [180, 460] };
    // The network guesses the hidden hip 150 px too high.
    const hidden: SmallFrame = { ...lower, left_hip: [220, 300, 0.1] };
    const { hips } = bodyHeights(smoothPoints(smallTrack(frames(hidden, lower, hidden))), 500);
    expect(hips[0]).toBeCloseTo(-455 / 500, 6);
    expect(hips.at(-1)).toBeCloseTo(-455 / 500, 6);
  });

  it('is level where nobody was seen, and empty without frames', () => {
    const { hips } = bodyHeights(smoothPoints(smallTrack(frames(null))), null);
    expect(new Set(hips)).toEqual(new Set([-0]));
    expect(bodyHeights(smoothPoints(smallTrack([])), 500).hips).toHaveLength(0);
  });
});
