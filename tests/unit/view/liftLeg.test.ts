import { describe, expect, it } from 'vitest';
import { sides, type Side } from '../../../src/protocol/side';
import { errorBand } from '../../../src/view/errorBand';
import { frontalKneeAngleDeg, squareToBody } from '../../../src/view/frontalKneeAngle';
import { liftLeg, segmentsPx, type PictureJoint, type PictureLeg } from '../../../src/view/liftLeg';
import { filmPerson, type Film, type Scene } from '../../support/syntheticPerson';

const focalPx = 1229;

/** The leg as an unerring eye sees it, from the picture's centre. */
function pictureLeg({ frames }: Film, side: Side): PictureLeg {
  const joint = (name: 'hip' | 'knee' | 'ankle'): PictureJoint => ({
    xPx: Float64Array.from(frames, ({ points }) => points[`${side}_${name}`].xPx - 360),
    yPx: Float64Array.from(frames, ({ points }) => points[`${side}_${name}`].yPx - 640),
  });
  const seen = new Uint8Array(frames.length).fill(1);
  return { hip: joint('hip'), knee: joint('knee'), ankle: joint('ankle'), seen };
}

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

describe('liftLeg(leg, segments, focalPx)', () => {
  it.each(sides)('gives the frontal angle of the %s leg back once the true yaw is taken off', (side) => {
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

describe('errorBand(leg, sample, side, sources, quantity)', () => {
  const leg = pictureLeg(filmPerson({ ...level, task: 'two-legged-bend' }), 'left');
  const lifted = liftLeg(leg, segmentsPx(leg)!, focalPx);
  const band = (yawSdDeg: number, jitter: number) =>
    errorBand(lifted, 60, 'left', { yawDeg: 0, yawSdDeg, jitter }, frontalKneeAngleDeg);

  it('grows with the trembling of the joints and with the doubt about the yaw', () => {
    expect(band(2, 0.02)).toBeGreaterThan(1.2 * band(2, 0));
    expect(band(4, 0)).toBeGreaterThan(1.2 * band(2, 0));
  });

  it('adds squares: joints and yaw each on their own, then together', () => {
    // band^2(yaw, jitter) = band^2(yaw, 0) + band^2(0, jitter) - band^2(0, 0); the angle is nearly straight in between.
    const together = band(2, 0.02) ** 2;
    expect(together / (band(2, 0) ** 2 + band(0, 0.02) ** 2 - band(0, 0) ** 2)).toBeCloseTo(1, 6);
  });

  it('is 1.645 times one standard deviation of a quantity that is known', () => {
    // The ankle's height depends on neither yaw, nor joints set aside, nor lengths, nor the lens: band 0. The knee's
    // place across moves as far as the joint does, its own yaw aside: 1.645 x hypot(placing, jitter).
    const low = errorBand(
      lifted,
      60,
      'left',
      { yawDeg: 0, yawSdDeg: 2, jitter: 0 },
      ({ ankle }) => ankle.y[0]!,
    );
    expect(low).toBeCloseTo(0, 9);
    const across = errorBand(
      lifted,
      60,
      'left',
      { yawDeg: 0, yawSdDeg: 0, jitter: 0.05 },
      ({ knee }) => knee.x[0]!,
    );
    expect(across).toBeGreaterThan(1.645 * 0.05);
    expect(across).toBeLessThan(1.645 * 0.06);
  });
});
