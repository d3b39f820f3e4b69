import { describe, expect, it } from 'vitest';
import { findJumps } from '#core/keypoints/findJumps';
import { smallTrack, type SmallFrame } from '../../../support/smallTrack';
import { filmPerson } from '../../../support/syntheticPerson';

/** Hips at (x, y), torso upright and of the given length. */
function person(xPx: number, yPx: number, torsoPx: number): SmallFrame {
  return {
    left_hip: [xPx + 15, yPx],
    right_hip: [xPx - 15, yPx],
    left_shoulder: [xPx + 22, yPx - torsoPx],
    right_shoulder: [xPx - 22, yPx - torsoPx],
  };
}

const times = <T>(count: number, value: T) => new Array<T>(count).fill(value);

describe('findJumps(track)', () => {
  it('finds none while one person does a task, however fast and noisy', () => {
    const { track } = filmPerson({
      repetitions: [{ peakDeg: 6, movingMs: 800 }, { peakDeg: 9 }],
      noisePx: 3,
    });
    expect(findJumps(track)).not.toContain(true);
  });

  it('finds none while the person walks in and out', () => {
    const { track } = filmPerson({ walkInFrom: 1.3, walkOutTo: -1.3 });
    expect(findJumps(track)).not.toContain(true);
  });

  it('marks the frames that follow somebody else', () => {
    const somebodyElse = { fromMs: 3000, untilMs: 4100 };
    const { track } = filmPerson({ somebodyElse: [somebodyElse], noisePx: 1 });
    const jumped = findJumps(track);
    track.timesMs.forEach((timeMs, frame) =>
      expect(jumped[frame]).toBe(timeMs >= somebodyElse.fromMs && timeMs < somebodyElse.untilMs),
    );
  });

  it('marks frames that follow somebody else at the start or the end', () => {
    const track = smallTrack([
      ...times(4, person(330, 300, 60)),
      ...times(9, person(150, 350, 120)),
      ...times(3, person(60, 320, 70)),
    ]);
    expect(findJumps(track)).toEqual([...times(4, true), ...times(9, false), ...times(3, true)]);
  });

  it('treats a person of the same size in the same place after a pause as the same person', () => {
    // 0.5 torso lengths to the side within a frame is a leap, yet less than 1.2 torso lengths away.
    const track = smallTrack([...times(6, person(150, 350, 120)), ...times(5, person(210, 350, 118))]);
    expect(findJumps(track)).not.toContain(true);
  });

  it('marks a person of the same size in another place', () => {
    const track = smallTrack([...times(6, person(120, 350, 120)), ...times(5, person(280, 350, 118))]);
    expect(findJumps(track)).toEqual([...times(6, false), ...times(5, true)]);
  });

  it('follows a person who moves in leaps, before the longest stretch and after it', () => {
    // 120 px each time: a leap, yet within 1.2 torso lengths; the outermost are farther from the middle than that.
    const steps = [20, 140].map((xPx) => times(2, person(xPx, 350, 120)));
    const after = [370, 380].map((xPx, i) => times(2, person(xPx, 350 + 130 * i, 120)));
    const track = smallTrack([...steps.flat(), ...times(7, person(260, 350, 120)), ...after.flat()]);
    expect(findJumps(track)).toEqual(times(15, false));
  });

  it('skips frames without a person', () => {
    const track = smallTrack([
      ...times(3, person(150, 350, 120)),
      null,
      null,
      ...times(2, person(155, 352, 121)),
    ]);
    expect(findJumps(track)).toEqual(times(7, false));
  });

  it('finds none where nobody is ever seen, nor in an empty track', () => {
    expect(findJumps(smallTrack([null, null]))).toEqual([false, false]);
    expect(findJumps(smallTrack([]))).toEqual([]);
  });
});
