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
        expect(apart(pose.shoulder[side], pose.elbow[side])).toBeCloseTo(segmentLengths.upperArm, 9);
        expect(apart(pose.elbow[side], pose.hand[side])).toBeCloseTo(segmentLengths.forearm, 9);
        for (const place of [pose.hip, pose.knee, pose.ankle, pose.toe, pose.elbow, pose.hand])
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

it('side-bridge-hold lies across the picture on the forearm, and comes up into one line', () => {
  const [start, end] = [
    figurePose('side-bridge-hold', 'right', 'start'),
    figurePose('side-bridge-hold', 'right', 'end'),
  ];
  for (const { head, shoulder, elbow, hand, hip } of [start, end]) {
    // Head at the person's right, feet at their left; the right side is the lower one.
    expect(head.x).toBeLessThan(-0.25);
    expect(hip.right.y).toBeLessThan(hip.left.y);
    expect(elbow.right.x).toBeCloseTo(shoulder.right.x, 9);
    expect(elbow.right.y).toBeLessThan(0.03);
    expect(hand.right.y).toBeCloseTo(elbow.right.y, 9);
  }
  expect(start.hip.right.y).toBeLessThan(0.08);
  expect(end.pelvis.y - start.pelvis.y).toBeGreaterThan(0.07);
  // How far the hip is off the line from shoulder to ankle, of 0.78 body heights.
  const { neck, pelvis, ankle } = end;
  const feet = { x: (ankle.left.x + ankle.right.x) / 2, y: (ankle.left.y + ankle.right.y) / 2 };
  const length = Math.hypot(feet.x - neck.x, feet.y - neck.y);
  const off = (feet.x - neck.x) * (pelvis.y - neck.y) - (feet.y - neck.y) * (pelvis.x - neck.x);
  expect(Math.abs(off / length)).toBeLessThan(0.02);
});
