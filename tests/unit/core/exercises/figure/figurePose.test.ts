import { describe, expect, it } from 'vitest';
import { exerciseIds, exercises } from '#core/exercises/exercises';
import { figurePose } from '#core/exercises/figure/figurePose';
import { segmentLengths, type Place } from '#core/exercises/figure/stance';
import { otherSide, sides } from '#core/protocol/side';

const apart = (a: Place, b: Place) => Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z);
const standing = exercises.filter(({ figure }) => figure.isLying !== true).map(({ id }) => id);

describe.each(exerciseIds)('figurePose(%s, side, moment)', (id) => {
  const poses = sides.flatMap((side) =>
    (['start', 'end'] as const).map((moment) => ({ side, pose: figurePose(id, side, moment) })),
  );

  it('keeps the lengths of thigh and shank, and every joint above the floor', () => {
    for (const { pose } of poses)
      for (const side of sides) {
        expect(apart(pose.hip[side], pose.knee[side])).toBeCloseTo(segmentLengths.thigh, 9);
        expect(apart(pose.knee[side], pose.ankle[side])).toBeCloseTo(segmentLengths.shank, 9);
        expect(apart(pose.shoulder[side], pose.hand[side])).toBeCloseTo(segmentLengths.arm, 9);
        for (const place of [pose.hip, pose.knee, pose.ankle, pose.toe, pose.hand])
          expect(place[side].y).toBeGreaterThan(0);
      }
  });

  it('is the mirror image for the other leg', () => {
    for (const moment of ['start', 'end'] as const) {
      const [left, right] = [figurePose(id, 'left', moment), figurePose(id, 'right', moment)];
      for (const side of sides) expect(left.knee[side].x).toBeCloseTo(-right.knee[otherSide(side)].x, 9);
    }
  });

  it('moves between start and end', () => {
    const [start, end] = [figurePose(id, 'right', 'start'), figurePose(id, 'right', 'end')];
    const moved = sides.map(
      (side) => apart(start.ankle[side], end.ankle[side]) + apart(start.knee[side], end.knee[side]),
    );
    expect(Math.max(...moved)).toBeGreaterThan(0.02);
  });
});

it.each(standing)('%s shows the working knee over its foot, and hip over knee, from the front', (id) => {
  for (const moment of ['start', 'end'] as const) {
    const { knee, ankle, hip } = figurePose(id, 'right', moment);
    expect(Math.abs(knee.right.x - ankle.right.x)).toBeLessThan(0.04);
    expect(Math.abs(hip.right.x - knee.right.x)).toBeLessThan(0.05);
  }
});
