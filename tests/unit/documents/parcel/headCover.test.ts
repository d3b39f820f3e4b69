import { describe, expect, it } from 'vitest';
import { keypointNames, type KeypointName } from '#core/keypoints/keypointNames';
import { headCover } from '#documents/parcel/headCover';
import { smallTrack, type SmallFrame } from '../../../support/smallTrack';

const headNames = keypointNames.slice(0, 11);

/** A head whose mouth, the lowest of its points, is at `mouthPx`, over shoulders 80 px apart at `shouldersPx`. */
function upper(mouthPx: number, shouldersPx: number): SmallFrame {
  const head = Object.fromEntries(
    headNames.map((name): [KeypointName, [number, number]] => [
      name,
      [200, name.startsWith('mouth') ? mouthPx : mouthPx - 20],
    ]),
  );
  return { ...head, left_shoulder: [240, shouldersPx], right_shoulder: [160, shouldersPx] };
}

/** Frames 40 ms apart, standing still. */
const still = (count: number): SmallFrame[] => Array.from({ length: count }, () => upper(100, 150));

describe('headCover(track)', () => {
  it('covers down to the higher shoulder where the head is above it', () => {
    // Mouth at 100 and 0.25 * 80 px below it: 120, above the shoulders at 150 and 146.
    const frame = { ...upper(100, 150), left_shoulder: [240, 146] } as SmallFrame;
    expect(headCover(smallTrack([frame]))(0)).toBe(146);
  });

  it('covers below the chin where the head is held lower than the shoulders', () => {
    // The mouth at 170 px, and a quarter of 80 px below it.
    expect(headCover(smallTrack([upper(170, 150)]))(0)).toBeCloseTo(190, 4);
  });

  it('takes any point of the head for it, however little the network trusts it', () => {
    const frame = { ...upper(100, 150), left_ear: [230, 180, 0.01] } as SmallFrame;
    expect(headCover(smallTrack([frame]))(0)).toBeCloseTo(200, 4);
  });

  it('reaches as low for a third of a second before and after the head was low', () => {
    const cover = headCover(smallTrack([...still(10), upper(170, 150), ...still(10)])); // Low at 400 ms.
    for (const timeMs of [100, 300, 400, 500, 700]) expect(cover(timeMs)).toBeCloseTo(190, 4);
    for (const timeMs of [0, 60, 740, 800]) expect(cover(timeMs)).toBe(150);
  });

  it('covers more of anyone who comes close to the camera', () => {
    const close = { ...upper(300, 310), left_shoulder: [360, 310], right_shoulder: [40, 310] } as SmallFrame;
    // Shoulders 320 px apart now: a quarter of it below the mouth.
    expect(headCover(smallTrack([...still(20), close]))(800)).toBeCloseTo(380, 4);
  });

  it('covers all of a picture in which nobody was seen, and of one without joints near it', () => {
    const cover = headCover(smallTrack([...still(5), null, ...still(5)])); // Nobody at 200 ms.
    expect(cover(200)).toBe(Infinity);
    expect(cover(185)).toBe(Infinity);
    expect(cover(175)).toBe(150);
    expect(cover(400 + 149)).toBe(150);
    expect(cover(400 + 151)).toBe(Infinity);
    expect(headCover(smallTrack([]))(0)).toBe(Infinity);
  });

  it('is never above the picture', () => {
    expect(headCover(smallTrack([upper(-90, -40)]))(0)).toBe(0);
  });
});
