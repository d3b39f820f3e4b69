import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { correctTrack } from '#core/correction/correctTrack';
import { mirrorRow, mirrorTrack, otherSidePoint } from '#core/correction/mirrorTrack';
import { placePoint } from '#core/correction/placePoint';
import { keypointCount, keypointNames } from '#core/keypoints/keypointNames';
import { frameRow } from '#core/keypoints/keypointTrack';
import { secondJoints } from '#core/looks/closerLook';
import { filmPerson, mirrorTrack as mirroredFilm } from '../../../support/syntheticPerson';

const { track } = filmPerson({ rateHz: 10, repetitions: [{ peakDeg: 20 }] });
const frames = fc.integer({ min: 0, max: track.timesMs.length - 1 });
/** 32 bits hold a place in a picture of 720 px to 0.00006 px. */
const roundingPx = 1e-3;

describe('a mirrored film', () => {
  it('is what a mirror shows, and mirrored again what was filmed', () => {
    expect(mirrorTrack(track)).toEqual(mirroredFilm(track));
    mirrorTrack(mirrorTrack(track)).xPx.forEach((x, at) =>
      expect(Math.abs(x - track.xPx[at]!)).toBeLessThan(roundingPx),
    );
  });

  it('has the points of each frame’s mirror image', () => {
    fc.assert(
      fc.property(frames, (frame) => {
        const back = mirrorRow(frameRow(mirrorTrack(track), frame), track.widthPx);
        frameRow(track, frame).forEach((value, at) =>
          expect(Math.abs(value - back[at]!)).toBeLessThan(roundingPx),
        );
      }),
    );
  });

  it('has a joint where somebody places it in the picture as it is shown', () => {
    fc.assert(
      fc.property(
        frames,
        fc.constantFrom(...keypointNames),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.boolean(),
        (frame, joint, xNorm, yNorm, isMirrored) => {
          const place = { timeMs: track.timesMs[frame]!, xNorm, yNorm };
          const points = [placePoint(joint, place, isMirrored)];
          const shown = correctTrack(track, { points, isMirrored });
          const at = frame * keypointCount + keypointNames.indexOf(joint);
          expect(Math.abs(shown.xPx[at]! - xNorm * track.widthPx)).toBeLessThan(roundingPx);
          expect(Math.abs(shown.yPx[at]! - yNorm * track.heightPx)).toBeLessThan(roundingPx);
        },
      ),
    );
  });
});

describe('the second network’s joints', () => {
  it('alternate between the sides, as its look at a mirror image takes them to', () => {
    secondJoints.forEach((name, place) => expect(secondJoints[place ^ 1]).toBe(otherSidePoint(name)));
  });
});
