import { describe, expect, it } from 'vitest';
import { keypointCount, keypointNames } from '#core/keypoints/keypointNames';
import { lookAt } from '#features/review/rules/lookAt';
import { filmPerson } from '../../../../support/syntheticPerson';

const { track } = filmPerson({ side: 'left', repetitions: [{ peakDeg: 4 }], rateHz: 25 });
const at = (name: (typeof keypointNames)[number]) => {
  const place = 3 * keypointCount + keypointNames.indexOf(name);
  return { x: track.xPx[place]!, y: track.yPx[place]! };
};

describe('lookAt(track, frame, measure, side)', () => {
  it('is the working knee, the pelvis or the shoulders, by what is measured', () => {
    expect(lookAt(track, 3, 'knee-angle', 'left')).toEqual(at('left_knee'));
    expect(lookAt(track, 3, 'depth', 'left')).toEqual(at('left_hip'));
    const [left, right] = [at('left_hip'), at('right_hip')];
    expect(lookAt(track, 3, 'pelvic-drop', 'left')!.x).toBeCloseTo((left.x + right.x) / 2, 6);
    expect(lookAt(track, 3, 'trunk-lean', 'left')!.y).toBeLessThan(left.y);
  });

  it('is nowhere where the joints were not seen', () => {
    const unseen = { ...track, score: track.score.slice().fill(0) };
    expect(lookAt(unseen, 3, 'knee-angle', 'left')).toBeNull();
    expect(lookAt(track, -1, 'knee-angle', 'left')).toBeNull();
  });
});
