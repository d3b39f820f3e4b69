import { describe, expect, it } from 'vitest';
import { sides } from '#core/protocol/side';
import { frontalKneeAngleDeg, squareToBody } from '#core/view/frontalKneeAngle';
import { liftLeg, placeOnRay, segmentsPx, type PictureLeg } from '#core/view/liftLeg';
import { emptyPath } from '#core/view/path';
import { filmFocalPx as focalPx, pictureLeg } from '../../../support/pictureLeg';
import { filmPerson, type Scene } from '../../../support/syntheticPerson';

/** A level camera looks along the floor, so that only the yaw lies between its frame and the body's. */
const level: Partial<Scene> = { camera: { pitchDeg: 0, heightM: 0.6 }, repetitions: [{ peakDeg: 16 }] };

describe('segmentsPx(leg)', () => {
  it('finds the standing lengths of thigh and shank', () => {
    // .245 and .246 x 1.7 m, about 2.7 m away through 1229 px: 190 px each.
    const { thigh, shank } = segmentsPx(pictureLeg(filmPerson(level), 'left'))!;
    for (const px of [thigh, shank]) expect(Math.abs(px - 190)).toBeLessThan(6);
  });

  it('is null where the leg was never seen', () => {
    const leg = pictureLeg(filmPerson(level), 'left');
    expect(segmentsPx({ ...leg, seen: leg.seen.map(() => 0) })).toBeNull();
  });
});

describe('segmentsPx(leg, standing)', () => {
  /** Knees in one place, thighs upright, shanks 3 aside for 4 down. */
  const legOf = (...lengths: { thigh: number; shank: number }[]): PictureLeg => ({
    hip: {
      xPx: Float64Array.from(lengths, () => 20),
      yPx: Float64Array.from(lengths, ({ thigh }) => 30 - thigh),
    },
    knee: { xPx: Float64Array.from(lengths, () => 20), yPx: Float64Array.from(lengths, () => 30) },
    ankle: {
      xPx: Float64Array.from(lengths, ({ shank }) => 20 + 0.6 * shank),
      yPx: Float64Array.from(lengths, ({ shank }) => 30 + 0.8 * shank),
    },
    seen: Uint8Array.from(lengths, () => 1),
  });
  const leg = legOf({ thigh: 100, shank: 80 }, { thigh: 100, shank: 80 }, { thigh: 300, shank: 180 });

  it('goes by the samples in which the person stands', () => {
    expect(segmentsPx(leg, Uint8Array.of(1, 1, 0))).toEqual({ thigh: 100, shank: 80 });
  });

  it('goes by all where nobody stands: the lengths that 95 % stay below, between the second and third', () => {
    // 0.95 x 2 = 1.9: from the second, 0.9 of the way to the third.
    const { thigh, shank } = segmentsPx(leg)!;
    expect(thigh).toBeCloseTo(280, 9);
    expect(shank).toBeCloseTo(170, 9);
    expect(segmentsPx(leg, Uint8Array.of(0, 0, 0))).toEqual({ thigh, shank });
  });

  it('leaves out what was not seen, and finds nothing where a segment has no length', () => {
    expect(segmentsPx({ ...leg, seen: Uint8Array.of(1, 1, 0) })).toEqual({ thigh: 100, shank: 80 });
    expect(segmentsPx(legOf({ thigh: 0, shank: 80 }))).toBeNull();
    expect(segmentsPx(legOf({ thigh: 100, shank: 0 }))).toBeNull();
  });
});

describe('placeOnRay(target, sample, rayX, rayY, from, distance, towards)', () => {
  const placed = (
    [x, y, z]: readonly [number, number, number],
    [rayX, rayY]: readonly [number, number],
    distance: number,
    towards: 1 | -1,
  ) => {
    const from = { x: Float64Array.of(x), y: Float64Array.of(y), z: Float64Array.of(z) };
    const target = emptyPath(1);
    placeOnRay(target, 0, rayX, rayY, from, distance, towards);
    return [target.x[0], target.y[0], target.z[0]];
  };
  const near = (place: (number | undefined)[], expected: number[]) =>
    place.forEach((value, i) => expect(value).toBeCloseTo(expected[i]!, 12));

  it('finds the nearer and the farther place on the axis', () => {
    near(placed([0, 0, 5], [0, 0], 3, -1), [0, 0, 2]);
    near(placed([0, 0, 5], [0, 0], 3, 1), [0, 0, 8]);
    // 3 aside: 4 before and 4 behind at a distance of 5.
    near(placed([3, 0, 9], [0, 0], 5, -1), [0, 0, 5]);
    near(placed([0, 3, 9], [0, 0], 5, 1), [0, 0, 13]);
  });

  it('goes along a line of sight to the side: 3 for 4 ahead are 5', () => {
    near(placed([3, 0, 4], [0.75, 0], 5, 1), [6, 0, 8]);
    near(placed([3, 0, 4], [0.75, 0], 2.5, -1), [1.5, 0, 2]);
    near(placed([0, -3, 4], [0, -0.75], 5, 1), [0, -6, 8]);
  });

  it('takes the nearest place of a line that is too far off', () => {
    near(placed([3, 0, 4], [0, 0], 1, 1), [0, 0, 4]);
    near(placed([3, 0, 4], [0, 0], 1, -1), [0, 0, 4]);
  });
});

describe('liftLeg(leg, segments, focalPx)', () => {
  it.each(sides)('recovers the frontal angle of the %s leg once the true yaw is removed', (side) => {
    for (const yawDeg of [-15, 0, 6, 20]) {
      const film = filmPerson({
        ...level,
        side,
        task: 'two-legged-bend',
        camera: { ...level.camera, yawDeg },
      });
      const leg = pictureLeg(film, side);
      // True lengths as they look at the ankle's distance, which the yaw changes by its place beside the middle.
      const outward = side === 'left' ? 1 : -1;
      const depthM = 2.7 - outward * 0.055 * 1.7 * Math.sin((yawDeg * Math.PI) / 180);
      const [thigh, shank] = [0.245, 0.246].map((share) => (share * 1.7 * focalPx) / depthM) as [
        number,
        number,
      ];
      const lifted = liftLeg(leg, { thigh, shank }, focalPx);
      const square = squareToBody(lifted, -yawDeg);
      const deepest = film.frames.reduce((a, b) => (b.places.left_hip.y < a.places.left_hip.y ? b : a));
      const deg = frontalKneeAngleDeg(square, side, film.frames.indexOf(deepest));
      expect(deg).toBeCloseTo(deepest.frontalDeg[side], 3);
      if (Math.abs(yawDeg) > 10)
        expect(Math.abs(deepest.pictureDeg[side] - deepest.frontalDeg[side])).toBeGreaterThan(10);
    }
  });

  it('recovers every joint in three dimensions, in shank lengths', () => {
    const film = filmPerson({ ...level, task: 'two-legged-bend' });
    // Square and level, the left ankle at z = 0 stands 2.7 m away; x is the person's left, the camera 0.6 m high.
    const [shankM, depthM] = [0.246 * 1.7, 2.7];
    const segments = { thigh: (0.245 * 1.7 * focalPx) / depthM, shank: (shankM * focalPx) / depthM };
    const lifted = liftLeg(pictureLeg(film, 'left'), segments, focalPx);
    for (const joint of ['hip', 'knee', 'ankle'] as const) {
      film.frames.forEach(({ places }, i) => {
        const place = places[`left_${joint}`];
        expect(lifted[joint].x[i]! * shankM).toBeCloseTo(place.x, 6);
        expect(lifted[joint].y[i]! * shankM).toBeCloseTo(0.6 - place.y, 6);
        expect(lifted[joint].z[i]! * shankM).toBeCloseTo(depthM - place.z, 6);
      });
    }
    expect(lifted.thigh).toBeCloseTo(0.245 / 0.246, 12);
  });

  it('puts a joint seen too far off on the nearest point of its line of sight', () => {
    const leg = pictureLeg(filmPerson(level), 'left');
    const { hip, knee } = liftLeg(leg, { thigh: 60, shank: 60 }, focalPx);
    for (const path of [hip, knee])
      for (const values of [path.x, path.y, path.z]) expect(values.every(Number.isFinite)).toBe(true);
    // On its line of sight still.
    expect((knee.x[9]! / knee.z[9]!) * focalPx).toBeCloseTo(leg.knee.xPx[9]!, 9);
  });

  it('leaves out what was not seen', () => {
    const leg = pictureLeg(filmPerson(level), 'left');
    leg.seen[5] = 0;
    const { ankle, knee } = liftLeg(leg, segmentsPx(leg)!, focalPx);
    expect([ankle.z[5], knee.z[5]]).toEqual([0, 0]);
    expect(ankle.z[4]).toBeGreaterThan(1);
  });

  it('keeps the lengths of thigh and shank where the joints allow it', () => {
    const leg = pictureLeg(filmPerson({ ...level, task: 'two-legged-bend' }), 'left');
    const { hip, knee, ankle, thigh } = liftLeg(leg, segmentsPx(leg)!, focalPx);
    // Frame 60 lies in the bend, at 2000 ms.
    const length = (a: typeof hip, b: typeof hip) =>
      Math.hypot(a.x[60]! - b.x[60]!, a.y[60]! - b.y[60]!, a.z[60]! - b.z[60]!);
    expect(length(hip, knee)).toBeCloseTo(thigh, 9);
    expect(length(knee, ankle)).toBeCloseTo(1, 9);
    expect(knee.z[60]).toBeLessThan(ankle.z[60]!);
  });
});
