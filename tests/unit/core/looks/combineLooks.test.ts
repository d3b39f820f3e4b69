import { describe, expect, it } from 'vitest';
import { keypointCount, keypointNames, type KeypointName } from '#core/keypoints/keypointNames';
import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import { secondJoints, type CloserFrame } from '#core/looks/closerLook';
import { combineLooks, secondWeight } from '#core/looks/combineLooks';
import { smallTrack, type SmallFrame } from '../../../support/smallTrack';

/** A leg of 100 px below the knee. */
const standing: SmallFrame = {
  left_hip: [200, 300],
  left_knee: [200, 400],
  left_ankle: [200, 500],
  right_hip: [150, 300],
  right_knee: [150, 400],
  right_ankle: [150, 500],
  left_heel: [200, 510],
  left_foot_index: [202, 530],
};

const row = (points: Partial<Record<KeypointName, readonly [number, number]>>): Float32Array => {
  const values = new Float32Array(keypointCount * 3);
  for (const [name, [x, y]] of Object.entries(points))
    values.set([x, y, 0.9], keypointNames.indexOf(name as KeypointName) * 3);
  return values;
};
const secondRow = (points: Partial<Record<(typeof secondJoints)[number], readonly [number, number]>>) => {
  const values = new Float32Array(secondJoints.length * 3);
  for (const [name, [x, y]] of Object.entries(points))
    values.set([x, y, 0.9], secondJoints.findIndex((joint) => joint === name) * 3);
  return values;
};
const look = (frame: number, more: Partial<Omit<CloserFrame, 'frame'>>): CloserFrame => ({
  frame,
  mirrored: null,
  second: secondRow({}),
  secondMirrored: secondRow({}),
  ...more,
});
const at = (track: KeypointTrack, frame: number, name: KeypointName) => {
  const place = frame * keypointCount + keypointNames.indexOf(name);
  return [track.xPx[place], track.yPx[place]];
};

/** The networks half and half, so that the expected places are round numbers. */
const half = 0.5;

describe('joints as several looks see them', () => {
  it('stay where they are without a closer look', () => {
    const track = smallTrack([standing]);
    expect(combineLooks(track, [])).toBe(track);
  });

  it('are between the networks by their weights, each the middle of a picture and its mirror image', () => {
    const looks = [
      look(0, {
        mirrored: row({ left_knee: [204, 398] }),
        second: secondRow({ left_knee: [208, 402] }),
        secondMirrored: secondRow({ left_knee: [212, 406] }),
      }),
    ];
    // First network: (202, 399). Second: (210, 404).
    expect(at(combineLooks(smallTrack([standing]), looks, half), 0, 'left_knee')).toEqual([206, 401.5]);
    const [x] = at(combineLooks(smallTrack([standing]), looks), 0, 'left_knee');
    expect(x).toBeCloseTo(202 + 8 * secondWeight, 4);
  });

  it('of a foot are read from both passes of the first network alone', () => {
    const combined = combineLooks(smallTrack([standing]), [
      look(0, { mirrored: row({ left_heel: [204, 512] }) }),
    ]);
    expect(at(combined, 0, 'left_heel')).toEqual([202, 511]);
    expect(at(combined, 0, 'left_foot_index')).toEqual([202, 530]);
  });

  it('ignore a look that mistakes a joint for another', () => {
    const combined = combineLooks(
      smallTrack([standing]),
      [
        look(0, {
          mirrored: row({ left_knee: [150, 400] }), // The other knee, half a shank away.
          second: secondRow({ left_knee: [204, 400] }),
          secondMirrored: secondRow({ left_knee: [170, 400] }),
        }),
      ],
      half,
    );
    expect(at(combined, 0, 'left_knee')).toEqual([202, 400]);
  });

  it('between two closer looks follow both, by time; outside them the nearer one', () => {
    const timesMs = [0, 100, 200, 300, 400, 500];
    const combined = combineLooks(
      smallTrack(
        timesMs.map(() => standing),
        timesMs,
      ),
      [
        look(1, { mirrored: row({ left_knee: [204, 400] }) }), // +2 in the middle
        look(4, { mirrored: row({ left_knee: [216, 400] }) }), // +8
      ],
    );
    const shifts = timesMs.map((_, frame) => at(combined, frame, 'left_knee')[0]! - 200);
    expect(shifts).toEqual([2, 2, 4, 6, 8, 8]);
  });

  it('keep their scores, and a frame without a person stays empty', () => {
    const track = smallTrack([standing, null]);
    const combined = combineLooks(track, [look(0, { mirrored: row({ left_knee: [204, 400] }) })]);
    expect(combined.score).toEqual(track.score);
    expect(at(combined, 1, 'left_knee')).toEqual([0, 0]);
  });

  it('of the track handed in are not touched', () => {
    const track = smallTrack([standing]);
    const before = track.xPx.slice();
    combineLooks(track, [look(0, { mirrored: row({ left_knee: [204, 400] }) })]);
    expect(track.xPx).toEqual(before);
  });
});
