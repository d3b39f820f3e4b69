import { describe, expect, it } from 'vitest';
import { hasPerson, leastScore, observedPoint } from '#core/keypoints/observedPoint';
import { smallTrack } from '../../../support/smallTrack';

describe('observedPoint(track, name, jumped)', () => {
  it('reads one point through all frames', () => {
    const track = smallTrack([{ left_knee: [111, 222], right_knee: [90, 221] }, { left_knee: [113, 226] }]);
    const { xPx, yPx, problems } = observedPoint(track, 'left_knee', []);
    expect(Array.from(xPx)).toEqual([111, 113]);
    expect(Array.from(yPx)).toEqual([222, 226]);
    expect(problems).toEqual([null, null]);
  });

  it.each([
    ['left of', -0.5, 30],
    ['right of', 400.5, 30],
    ['above', 30, -0.5],
    ['below', 30, 700.5],
  ])('marks a point %s the picture', (_, xPx, yPx) => {
    const { problems } = observedPoint(smallTrack([{ left_ankle: [xPx, yPx] }]), 'left_ankle', []);
    expect(problems).toEqual(['out-of-picture']);
  });

  it('accepts a point on the very edge of the picture', () => {
    const track = smallTrack([{ left_ankle: [0, 700] }, { left_ankle: [400, 0] }]);
    expect(observedPoint(track, 'left_ankle', []).problems).toEqual([null, null]);
  });

  it('marks a point below the least score, and accepts one exactly at it', () => {
    expect(leastScore).toBe(0.5);
    const track = smallTrack([{ right_hip: [70, 80, 0.49] }, { right_hip: [71, 82, 0.5] }]);
    expect(observedPoint(track, 'right_hip', []).problems).toEqual(['joint-unseen', null]);
  });

  it('names the most basic reason: nobody, somebody else, out of the picture, then unseen', () => {
    const outside: [number, number, number] = [-20, 80, 0.1];
    const track = smallTrack([
      null,
      { right_hip: outside },
      { right_hip: outside },
      { right_hip: [20, 80, 0.1] },
    ]);
    expect(observedPoint(track, 'right_hip', [true, true, false, false]).problems).toEqual([
      'no-person',
      'tracking-jumped',
      'out-of-picture',
      'joint-unseen',
    ]);
  });
});

describe('hasPerson(track, frame)', () => {
  it('is true where any point has a score, and false where none has', () => {
    const track = smallTrack([null, {}, null]);
    expect([0, 1, 2].map((frame) => hasPerson(track, frame))).toEqual([false, true, false]);
  });
});
