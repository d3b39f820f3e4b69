import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { seededRandom } from '#core/seededRandom';
import { quantileOf } from '#core/signal/quantileOf';
import { errorBand, noBand, ownBand, placingSd, scaleBand } from '#core/view/errorBand';
import { frontalKneeAngleDeg, squareToBody } from '#core/view/frontalKneeAngle';
import {
  liftLeg,
  segmentsPx,
  type LiftedLeg,
  type PictureJoint,
  type PictureLeg,
  type SegmentsPx,
} from '#core/view/liftLeg';
import type { Path } from '#core/view/path';
import { filmFocalPx as focalPx, pictureLeg } from '../../../support/pictureLeg';
import { toRad } from '../../../support/space';
import { filmPerson, type Scene } from '../../../support/syntheticPerson';

/** 4000 draws tell a share of 0.9 to 0.005, one standard deviation; three of them. */
const leastShare = 0.9 - 3 * 0.005;
/** Each source is moved one way only, where a longer lens or segment does not do the opposite of a shorter one. */
const widest = 1.12;
/** A level camera looks along the floor, so that only the yaw lies between its frame and the body's. */
const level: Partial<Scene> = { camera: { pitchDeg: 0, heightM: 0.6 }, repetitions: [{ peakDeg: 16 }] };

interface Tilt {
  rollDeg: number;
  pitchDeg: number;
}

/** A leg of one sample as a camera sees it that is rolled and pitched by so much. */
function tilted(leg: LiftedLeg, { rollDeg, pitchDeg }: Tilt): LiftedLeg {
  const [roll, pitch] = [toRad(rollDeg), toRad(pitchDeg)];
  const turn = ({ x: [x = 0], y: [y = 0], z: [z = 0] }: Path): Path => {
    const down = y * Math.cos(roll) + x * Math.sin(roll);
    return {
      x: Float64Array.of(x * Math.cos(roll) - y * Math.sin(roll)),
      y: Float64Array.of(down * Math.cos(pitch) - z * Math.sin(pitch)),
      z: Float64Array.of(z * Math.cos(pitch) + down * Math.sin(pitch)),
    };
  };
  return { ...leg, hip: turn(leg.hip), knee: turn(leg.knee), ankle: turn(leg.ankle) };
}

describe('errorBand(leg, side, sources, quantity)', () => {
  const leg = pictureLeg(filmPerson({ ...level, task: 'two-legged-bend' }), 'left');
  const lifted = liftLeg(leg, segmentsPx(leg)!, focalPx);
  const band = (yawSdDeg: number, jitter: number) =>
    errorBand(lifted, 'left', { yawDeg: 0, yawSdDeg, rollSdDeg: 1, jitter }, frontalKneeAngleDeg)(60).whole;

  it('grows with the trembling of the joints and the uncertainty of the yaw', () => {
    expect(band(2, 0.02)).toBeGreaterThan(1.2 * band(2, 0));
    expect(band(4, 0)).toBeGreaterThan(1.2 * band(2, 0));
  });

  it('never shrinks with more noise or uncertainty, at any moment of a movement', () => {
    const share = fc.double({ min: 0, max: 0.03, noNaN: true });
    const deg = fc.double({ min: 0, max: 5, noNaN: true });
    const sample = fc.nat(lifted.knee.x.length - 1);
    fc.assert(
      fc.property(sample, share, share, deg, deg, (i, jitter, moreJitter, yawSdDeg, moreDeg) => {
        const at = (sources: { yawSdDeg: number; jitter: number }) =>
          errorBand(lifted, 'left', { yawDeg: 0, rollSdDeg: 1, ...sources }, frontalKneeAngleDeg)(i).whole;
        const here = at({ yawSdDeg, jitter }) - 1e-9;
        expect(at({ yawSdDeg, jitter: jitter + moreJitter })).toBeGreaterThanOrEqual(here);
        expect(at({ yawSdDeg: yawSdDeg + moreDeg, jitter })).toBeGreaterThanOrEqual(here);
      }),
    );
  });

  it('adds the squares of the effects of joints and yaw', () => {
    // band^2(yaw, jitter) = band^2(yaw, 0) + band^2(0, jitter) - band^2(0, 0); the angle is nearly straight in between.
    const together = band(2, 0.02) ** 2;
    expect(together / (band(2, 0) ** 2 + band(0, 0.02) ** 2 - band(0, 0) ** 2)).toBeCloseTo(1, 6);
  });

  it('counts as own what the joints do, and as shared what the yaw, the lens and the camera do', () => {
    const of = (yawSdDeg: number, jitter: number) =>
      errorBand(lifted, 'left', { yawDeg: 0, yawSdDeg, rollSdDeg: 1, jitter }, frontalKneeAngleDeg)(60);
    // More doubt in the yaw leaves the own part as it is; more trembling leaves the shared one.
    expect(of(4, 0.01).own).toBeCloseTo(of(1, 0.01).own, 12);
    const shared = ({ whole, own }: { whole: number; own: number }) => Math.sqrt(whole * whole - own * own);
    expect(shared(of(4, 0.02))).toBeCloseTo(shared(of(4, 0)), 9);
    expect(of(4, 0.02).own).toBeGreaterThan(of(4, 0).own);
    // The joint's place across is nothing but own, apart from the camera's roll and pitch.
    const across = errorBand(
      lifted,
      'left',
      { yawDeg: 0, yawSdDeg: 0, rollSdDeg: 0, jitter: 0.05 },
      ({ knee }) => knee.x[0]!,
    )(60);
    expect(across.own).toBeCloseTo(1.645 * Math.hypot(placingSd, 0.05), 9);
  });

  it('is 1.645 times one standard deviation of a quantity that is known', () => {
    // From knee to ankle it is one shank wherever the camera is, so that only the shank's length counts, 2 % of it;
    // the knee's place across moves as far as the joint does, its own yaw aside: 1.645 x hypot(placing, jitter).
    const shank = errorBand(
      lifted,
      'left',
      { yawDeg: 0, yawSdDeg: 2, rollSdDeg: 2, jitter: 0 },
      ({ knee, ankle }) =>
        Math.hypot(knee.x[0]! - ankle.x[0]!, knee.y[0]! - ankle.y[0]!, knee.z[0]! - ankle.z[0]!),
    )(60).whole;
    expect(shank).toBeCloseTo(1.645 * 0.02, 2);
    const across = errorBand(
      lifted,
      'left',
      { yawDeg: 0, yawSdDeg: 0, rollSdDeg: 0, jitter: 0.05 },
      ({ knee }) => knee.x[0]!,
    )(60).whole;
    expect(across).toBeGreaterThan(1.645 * 0.05);
    expect(across).toBeLessThan(1.645 * 0.06);
  });

  it('includes the lens: through one a fifth longer, the person is a fifth farther away', () => {
    const distance = errorBand(
      lifted,
      'left',
      { yawDeg: 0, yawSdDeg: 0, rollSdDeg: 0, jitter: 0 },
      ({ ankle }) => ankle.z[0]!,
    )(60).whole;
    // A pitch of 4 degrees adds a little, by as much as the ankle is below the camera's axis.
    const byLens = 1.645 * 0.2 * lifted.ankle.z[60]!;
    expect(distance / byLens).toBeGreaterThan(1);
    expect(distance / byLens).toBeLessThan(1.05);
  });

  it.each([
    ['square', { yawDeg: 0, offCentreM: 0 }, 2.5],
    ['at the edge of the picture', { yawDeg: 0, offCentreM: 0.65 }, 0],
    ['turned', { yawDeg: 8, offCentreM: 0 }, 0],
  ])('holds nine of ten errors of a leg %s, with all sources drawn at random', (_, view, yawSdDeg) => {
    const film = filmPerson({ ...level, task: 'two-legged-bend', camera: { ...level.camera, ...view } });
    const leg = pictureLeg(film, 'left');
    const [jitter, draws, rollSdDeg, pitchSdDeg] = [0.001, 4000, 1.2, 4];
    const segments = segmentsPx(leg)!;
    const random = seededRandom(20);
    const jointSdPx = Math.hypot(placingSd, jitter) * segments.shank;
    const at = ({ xPx, yPx }: PictureJoint, asidePx: number): PictureJoint => ({
      xPx: Float64Array.of(xPx[60]! + asidePx),
      yPx: Float64Array.of(yPx[60]!),
    });
    const picture = (px: () => number): PictureLeg => ({
      hip: at(leg.hip, px()),
      knee: at(leg.knee, px()),
      ankle: at(leg.ankle, px()),
      seen: Uint8Array.of(1),
    });
    // A camera on the person's left sees their front point to the picture's left: negative.
    const angle = (seen: PictureLeg, lengths: SegmentsPx, focal: number, yawOffDeg: number, tilt: Tilt) =>
      frontalKneeAngleDeg(
        squareToBody(tilted(liftLeg(seen, lengths, focal), tilt), yawOffDeg - view.yawDeg),
        'left',
        0,
      );
    const band = errorBand(
      liftLeg(leg, segments, focalPx),
      'left',
      { yawDeg: -view.yawDeg, yawSdDeg, rollSdDeg, jitter },
      frontalKneeAngleDeg,
    )(60).whole;
    const bearingDeg = (Math.atan2(leg.knee.xPx[60]!, focalPx) * 180) / Math.PI;
    const truth = angle(
      picture(() => 0),
      segments,
      focalPx,
      0,
      { rollDeg: 0, pitchDeg: 0 },
    );
    // Each segment 2 % and the lens 20 % off, as the band assumes; a longer lens turns the yaw with the bearing.
    const errors = Array.from({ length: draws }, () => {
      const focalBy = 1 + 0.2 * random.gaussian();
      const yawOffDeg = yawSdDeg * random.gaussian() + bearingDeg * (1 - 1 / focalBy);
      const thigh = segments.thigh * (1 + 0.02 * random.gaussian());
      const shank = segments.shank * (1 + 0.02 * random.gaussian());
      const seen = picture(() => jointSdPx * random.gaussian());
      const tilt = { rollDeg: rollSdDeg * random.gaussian(), pitchDeg: pitchSdDeg * random.gaussian() };
      return Math.abs(angle(seen, { thigh, shank }, focalPx * focalBy, yawOffDeg, tilt) - truth);
    });
    const covered = errors.filter((deg) => deg <= band).length / draws;
    expect(covered).toBeGreaterThan(leastShare);
    expect(band).toBeLessThan(widest * quantileOf(errors, 0.9)!);
  });
});

describe('errorBand(leg, side, sources, quantity) of one point, source by source', () => {
  /** Shank 1 (0.96 down and 0.28 behind), thigh 1.1 (0.88 and 0.66): the knee in front. A sample before it, of no matter. */
  const path = (x: number, y: number, z: number): Path => ({
    x: Float64Array.of(9, x),
    y: Float64Array.of(9, y),
    z: Float64Array.of(99, z),
  });
  const [x, y, z] = [0.3, 0.9, 6];
  const leg: LiftedLeg = {
    ankle: path(x, y, z),
    knee: path(0.3, -0.06, 5.72),
    hip: path(0.3, -0.94, 6.38),
    thigh: 1.1,
  };
  const [yawSdDeg, rollSdDeg, pitchSdDeg, jitter] = [3, 2, 4, 0.01];
  const jointSd = Math.hypot(0.014, jitter);
  const both = [1, -1] as const;

  type Point = readonly [x: number, y: number, z: number];
  const byYaw = ([x, y, z]: Point, deg: number): Point => {
    const rad = toRad(deg);
    return [x * Math.cos(rad) + z * Math.sin(rad), y, z * Math.cos(rad) - x * Math.sin(rad)];
  };
  /** The ankle after each source has moved it by one standard deviation, either way. */
  const moved = (yawDeg: number): { own: Point[][]; shared: Point[][] } => {
    const bearingDeg = (Math.atan2(0.3, 5.72) * 180) / Math.PI;
    const [roll, pitch] = [toRad(rollSdDeg), toRad(pitchSdDeg)];
    return {
      own: [both.map((by) => byYaw([x + by * jointSd, y, z], yawDeg))],
      shared: [
        both.map((by) => byYaw([x, y, z], yawDeg + by * yawSdDeg)),
        // Through a longer lens the person is farther away, and the yaw follows the bearing of the knee.
        both.map((by) => byYaw([x, y, z * (1 + 0.2 * by)], yawDeg + bearingDeg * (1 - 1 / (1 + 0.2 * by)))),
        both.map((by) => {
          const [cos, sin] = [Math.cos(roll), by * Math.sin(roll)];
          return byYaw([x * cos - y * sin, y * cos + x * sin, z], yawDeg);
        }),
        both.map((by) => {
          const [cos, sin] = [Math.cos(pitch), by * Math.sin(pitch)];
          return byYaw([x, y * cos - z * sin, z * cos + y * sin], yawDeg);
        }),
      ],
    };
  };

  const across = ([x]: Point) => x;
  const down = ([, y]: Point) => y;
  const ahead = ([, , z]: Point) => z;
  it.each([
    [0, 'across', across],
    [0, 'down', down],
    [0, 'ahead', ahead],
    [0, 'across and down', (point: Point) => across(point) + down(point)],
    [25, 'across', across],
    [25, 'ahead', ahead],
    [-40, 'across', across],
  ] as const)('at a yaw of %d adds the larger of both effects of each source %s', (yawDeg, _, of) => {
    const here = of(byYaw([x, y, z], yawDeg));
    const squares = (sources: Point[][]) =>
      sources.reduce(
        (sum, ways) => sum + Math.max(...ways.map((point) => Math.abs(of(point) - here))) ** 2,
        0,
      );
    const { own, shared } = moved(yawDeg);
    const sources = { yawDeg, yawSdDeg, rollSdDeg, jitter };
    const band = errorBand(leg, 'left', sources, ({ ankle }) => of([ankle.x[0]!, ankle.y[0]!, ankle.z[0]!]))(
      1,
    );
    expect(band.own).toBeCloseTo(1.645 * Math.sqrt(squares(own)), 9);
    expect(band.whole).toBeCloseTo(1.645 * Math.sqrt(squares(own) + squares(shared)), 9);
  });

  it('counts 2 % of the thigh, and the places of hip and knee, for the length of the thigh', () => {
    const between = (one: Path, other: Path) =>
      Math.hypot(one.x[0]! - other.x[0]!, one.y[0]! - other.y[0]!, one.z[0]! - other.z[0]!);
    const sources = { yawDeg: 7, yawSdDeg, rollSdDeg, jitter };
    const thigh = errorBand(leg, 'left', sources, ({ hip, knee }) => between(hip, knee))(1);
    // A joint moved aside by s lengthens 1.1 to the root of 1.21 + s^2.
    const aside = Math.hypot(1.1, jointSd) - 1.1;
    expect(thigh.own).toBeCloseTo(1.645 * Math.SQRT2 * aside, 9);
    expect(thigh.whole).toBeCloseTo(1.645 * Math.sqrt(2 * aside ** 2 + 0.022 ** 2), 9);
    const shank = errorBand(leg, 'left', sources, ({ knee, ankle }) => between(knee, ankle))(1);
    const asideShank = Math.hypot(1, jointSd) - 1;
    expect(shank.whole).toBeCloseTo(1.645 * Math.sqrt(2 * asideShank ** 2 + 0.02 ** 2), 9);
  });

  it('hands over the thigh’s length as each source leaves it, the side, and the one sample', () => {
    const seen: [number, string, number][] = [];
    errorBand(leg, 'right', { yawDeg: 0, yawSdDeg, rollSdDeg, jitter }, ({ thigh }, side, i) => {
      seen.push([thigh, side, i]);
      return 0;
    })(1);
    expect(new Set(seen.map(([, side, i]) => `${side} ${i}`))).toEqual(new Set(['right 0']));
    const lengths = seen.map(([thigh]) => Math.round(thigh * 1e6) / 1e6);
    expect(lengths.filter((length) => length === 1.122)).toHaveLength(1);
    expect(lengths.filter((length) => length === 1.078)).toHaveLength(1);
    expect(lengths.filter((length) => length === 1.1)).toHaveLength(lengths.length - 2);
  });
});

describe('bands', () => {
  it('are their own, nothing, or wider by a factor', () => {
    expect(ownBand(3)).toEqual({ whole: 3, own: 3 });
    expect(noBand).toEqual({ whole: 0, own: 0 });
    expect(scaleBand({ whole: 3, own: 2 }, 1.5)).toEqual({ whole: 4.5, own: 3 });
  });
});
