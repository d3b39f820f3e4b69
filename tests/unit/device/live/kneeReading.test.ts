import { describe, expect, it } from 'vitest';
import { keypointCount, keypointNames, type KeypointName } from '#core/keypoints/keypointNames';
import { kneeReading } from '#device/live/kneeReading';

/** px of a picture; every other point stays unseen. */
function rowOf(points: Partial<Record<KeypointName, [x: number, y: number]>>): Float32Array {
  const row = new Float32Array(keypointCount * 3);
  for (const [name, [x, y]] of Object.entries(points)) {
    row.set([x, y, 0.9], keypointNames.indexOf(name as KeypointName) * 3);
  }
  return row;
}

const straight = {
  right_hip: [100, 100],
  right_knee: [100, 200],
  right_ankle: [100, 300],
  right_heel: [96, 310],
  right_foot_index: [104, 330],
} as const satisfies Partial<Record<KeypointName, readonly [number, number]>>;
type Points = Parameters<typeof rowOf>[0];

describe('kneeReading(row, side)', () => {
  it('reads a straight leg as 0 degrees, with the plumb line from the middle of the foot', () => {
    expect(kneeReading(rowOf(straight as unknown as Points), 'right')).toEqual({
      deg: 0,
      foot: { x: 100, y: 320 },
      hip: { x: 100, y: 100 },
    });
  });

  it('is positive inward: for the right leg to the picture’s right', () => {
    // Thigh and shank each lean by atan(20 / 100) = 11.31 degrees.
    const inward = rowOf({ ...(straight as unknown as Points), right_knee: [120, 200] });
    expect(kneeReading(inward, 'right')!.deg).toBeCloseTo(22.62, 2);
  });

  it('gives nothing of somebody seen from behind, where inward looks like outward', () => {
    const points = straight as unknown as Points;
    expect(kneeReading(rowOf({ ...points, left_hip: [140, 100] }), 'right')).not.toBeNull();
    expect(kneeReading(rowOf({ ...points, left_hip: [60, 100] }), 'right')).toBeNull();
  });

  it('gives nothing for an unseen leg, for nobody, and for a thigh that points at the camera', () => {
    expect(kneeReading(null, 'right')).toBeNull();
    expect(kneeReading(rowOf(straight as unknown as Points), 'left')).toBeNull();
    expect(
      kneeReading(rowOf({ ...(straight as unknown as Points), right_hip: [100, 160] }), 'right'),
    ).toBeNull();
  });
});
