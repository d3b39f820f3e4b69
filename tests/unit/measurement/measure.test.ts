import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { curveReason, type Curve, type MissingReason } from '../../../src/measurement/curve';
import { measure } from '../../../src/measurement/measure';
import type { Measurement } from '../../../src/measurement/measurement';
import type { KeypointTrack } from '../../../src/keypoints/keypointTrack';
import { otherSide, sides } from '../../../src/protocol/side';
import { taskIds, type TaskId } from '../../../src/protocol/tasks';
import { filmPerson, mirrorTrack, type Scene } from '../../support/syntheticPerson';

/** The low-pass at 6 Hz and a base of 30 Hz flatten the peak of an unhurried repetition by so much; without noise. */
const smoothDeg = 0.3;
/** 1 px of noise on joints 190 px apart is 0.3 degrees a line; the highest of some 80 smoothed samples lies up to 3 SD up. */
const noisyDeg = 1.5;
/** Positions are kept in 32 bits: a grain of 0.0001 px on a thigh of 120 px. */
const grainDeg = 0.001;

type FilmedScene = Partial<Omit<Scene, 'task'>> & { task?: TaskId };

function film(scene: FilmedScene = {}) {
  const { task = 'single-leg-squat', side = 'left' } = scene;
  const filmed = filmPerson({ task, side, ...scene });
  return Object.assign(filmed, { measurement: measure(filmed.track, { task, side }) });
}

const peaks = ({ repetitions }: Measurement) =>
  repetitions.map(({ kneeAngleMaxDeg }) => kneeAngleMaxDeg?.value ?? null);
const kinds = ({ notes }: Measurement) => notes.map(({ kind }) => kind);
const reasonsIn = (curve: Curve, { timesMs }: Measurement, fromMs: number, untilMs: number) => {
  const reasons = new Set<MissingReason | null>();
  timesMs.forEach((timeMs, i) => {
    if (timeMs > fromMs && timeMs < untilMs) reasons.add(curveReason(curve, i));
  });
  return [...reasons];
};

/** Every number of a measurement that must be one. */
function numbersOf({ timesMs, rateHz, kneeAngleDeg, kneeDeviation, repetitions }: Measurement): number[] {
  const extremes = repetitions.flatMap(
    ({ kneeAngleMaxDeg, kneeAngleMinDeg, kneeDeviation, measuredShare }) => [
      measuredShare,
      ...[kneeAngleMaxDeg, kneeAngleMinDeg, kneeDeviation].map((extreme) => extreme?.value ?? 0),
    ],
  );
  return [rateHz, ...timesMs, ...kneeAngleDeg.values, ...kneeDeviation.values, ...extremes];
}

describe('measure(track, setup)', () => {
  describe.each(sides)('with the %s leg', (side) => {
    it.each(taskIds)('gives the picture angle of a %s back', (task) => {
      const plannedDeg = [3, 17, -11, 8];
      const { measurement, repetitions } = film({
        task,
        side,
        repetitions: plannedDeg.map((peakDeg) => ({ peakDeg, movingMs: 4000 })),
      });
      expect(measurement.repetitions).toHaveLength(4);
      measurement.repetitions.forEach(({ kneeAngleMaxDeg, kneeAngleMinDeg, completeness, number }, i) => {
        const { picture } = repetitions[i]!;
        expect([completeness, number]).toEqual(['complete', i + 1]);
        if (plannedDeg[i]! > 5)
          expect(Math.abs(kneeAngleMaxDeg!.value - picture.maxDeg)).toBeLessThan(smoothDeg);
        if (plannedDeg[i]! < -5)
          expect(Math.abs(kneeAngleMinDeg!.value - picture.minDeg)).toBeLessThan(smoothDeg);
      });
      expect(measurement.notes).toEqual([]);
    });
  });

  it('gives the picture angle of every frame back where it measures at all', () => {
    const { measurement, frames } = film();
    frames.forEach(({ pictureDeg }, i) => {
      expect(curveReason(measurement.kneeAngleDeg, i)).toBeNull();
      expect(Math.abs(measurement.kneeAngleDeg.values[i]! - pictureDeg.left)).toBeLessThan(smoothDeg);
    });
  });

  it('gives it back through pixel noise, uneven times and single lost frames', () => {
    const { measurement, repetitions } = film({ noisePx: 1, unevenness: 0.3, droppedShare: 0.1, seed: 8 });
    expect(peaks(measurement)).toHaveLength(3);
    peaks(measurement).forEach((deg, i) =>
      expect(Math.abs(deg! - repetitions[i]!.picture.maxDeg)).toBeLessThan(noisyDeg),
    );
  });

  it.each([10, 15, 24, 25, 30, 50, 60])('finds the repetitions in %d frames a second', (rateHz) => {
    const { measurement, repetitions } = film({ rateHz });
    expect(measurement.repetitions).toHaveLength(repetitions.length);
    expect(kinds(measurement)).toEqual(rateHz < 15 ? ['few-frames'] : []);
    measurement.repetitions.forEach(({ kneeAngleMaxDeg }, i) =>
      expect(Math.abs(kneeAngleMaxDeg!.value - repetitions[i]!.picture.maxDeg)).toBeLessThan(smoothDeg),
    );
  });

  it('measures the deviation of the knee in shares of the standing leg', () => {
    // At the bottom of the middle repetition, hip and ankle given: half the angle on either segment, so roughly
    // tan(angle / 2) times half the line; checked exactly against the true points of that frame.
    const { measurement, frames } = film({ camera: { pitchDeg: 0 } });
    const { kneeDeviation } = measurement.repetitions[1]!;
    const legPx = measurement.legLengthPx!;
    const { left_hip, left_knee, left_ankle } = frames[kneeDeviation!.sample]!.points;
    // Distance of the knee from the line, from the area of the triangle: twice the area over the base.
    const twiceArea = Math.abs(
      left_hip.xPx * (left_knee.yPx - left_ankle.yPx) +
        left_knee.xPx * (left_ankle.yPx - left_hip.yPx) +
        left_ankle.xPx * (left_hip.yPx - left_knee.yPx),
    );
    const base = Math.hypot(left_hip.xPx - left_ankle.xPx, left_hip.yPx - left_ankle.yPx);
    expect(kneeDeviation!.value).toBeGreaterThan(0);
    expect(kneeDeviation!.value).toBeCloseTo(twiceArea / base / legPx, 3);
    // Thigh and shank of .491 x 1.7 m, 2.7 m away through 1229 px: about 380 px.
    expect(legPx).toBeGreaterThan(370);
    expect(legPx).toBeLessThan(390);
  });

  it('says of which side it doubts', () => {
    for (const task of taskIds) {
      const { track } = film({ task, side: 'right' });
      expect(kinds(measure(track, { task, side: 'right' }))).toEqual([]);
      expect(measure(track, { task, side: 'left' }).notes).toContainEqual({
        kind: 'side-doubtful',
        side: 'left',
      });
    }
  });

  it('says so where nobody is found', () => {
    const { track } = film({ camera: { offCentreM: 9 } });
    const frames = track.timesMs.length;
    const measurement = measure(track, { task: 'single-leg-squat', side: 'left' });
    expect(measurement.notes).toEqual([{ kind: 'no-person', framesWithPerson: 0, frames }]);
    expect(measurement.repetitions).toEqual([]);
  });

  it('says so where nobody moves', () => {
    const { measurement } = film({ repetitions: [], restMs: 3000 });
    expect(measurement.notes).toEqual([{ kind: 'no-repetitions' }]);
  });

  it('says so where the feet are out of the picture', () => {
    const { measurement } = film({ camera: { heightPx: 1280, pitchDeg: 17 } });
    expect(measurement.notes).toContainEqual({ kind: 'legs-not-seen', reason: 'out-of-picture' });
    for (const { kneeAngleMaxDeg, mainReason, measuredShare } of measurement.repetitions)
      expect([kneeAngleMaxDeg, mainReason, measuredShare]).toEqual([null, 'out-of-picture', 0]);
  });

  it('gives the reason where a joint is unseen, and no number', () => {
    const { measurement } = film({ unseen: [{ joint: 'left_knee', fromMs: 5000, untilMs: 7000 }] });
    expect(reasonsIn(measurement.kneeAngleDeg, measurement, 5050, 6900)).toEqual(['joint-unseen']);
    const [first, second] = measurement.repetitions;
    expect(first).toMatchObject({ measuredShare: 1, mainReason: null });
    expect(second!.measuredShare).toBeLessThan(0.5);
    expect(second!.mainReason).toBe('joint-unseen');
  });

  it('leaves the working leg alone where a joint of the other is unseen', () => {
    const { measurement } = film({ unseen: [{ joint: 'right_knee', fromMs: 0, untilMs: 60_000 }] });
    expect(measurement.repetitions.map(({ measuredShare }) => measuredShare)).toEqual([1, 1, 1]);
  });

  it('gives the reason where frames were lost, and bridges a short hole', () => {
    const long = film({ dropped: [{ fromMs: 2000, untilMs: 2600 }] }).measurement;
    expect(reasonsIn(long.kneeAngleDeg, long, 2010, 2590)).toEqual(['frames-missing']);
    const short = film({ dropped: [{ fromMs: 2000, untilMs: 2090 }] }).measurement;
    expect(reasonsIn(short.kneeAngleDeg, short, 0, 60_000)).toEqual([null]);
  });

  it('leaves out the time in which somebody else is followed', () => {
    const { measurement, track } = film({ somebodyElse: [{ fromMs: 3900, untilMs: 4700 }] });
    expect(reasonsIn(measurement.kneeAngleDeg, measurement, 3910, 4650)).toEqual(['tracking-jumped']);
    const frames = track.timesMs.filter((timeMs) => timeMs >= 3900 && timeMs < 4700).length;
    expect(measurement.notes).toContainEqual({ kind: 'somebody-else', frames });
    expect(measurement.repetitions).toHaveLength(3);
  });

  it('gives no angle while the thigh points at the camera', () => {
    const { measurement, repetitions } = film({ task: 'split-stance-sit-to-stand' });
    const { startMs, topMs, topEndMs } = repetitions[0]!.events;
    expect(reasonsIn(measurement.kneeAngleDeg, measurement, 0, startMs!)).toEqual(['thigh-foreshortened']);
    expect(reasonsIn(measurement.kneeAngleDeg, measurement, topMs!, topEndMs!)).toEqual([null]);
    expect(reasonsIn(measurement.kneeDeviation, measurement, 0, startMs!)).toEqual([null]);
  });

  it('finds the repetitions of somebody who walks in and out', () => {
    const { measurement } = film({ walkInFrom: 1.2, walkOutTo: 1.2 });
    expect(measurement.repetitions.map(({ completeness }) => completeness)).toEqual(
      new Array(3).fill('complete'),
    );
  });

  it('never gives a number that is none', () => {
    const scenes: FilmedScene[] = [
      { walkInFrom: -1.2, noisePx: 6, droppedShare: 0.4 },
      { filmed: { fromMs: 2000, untilMs: 2040 } },
      { filmed: { fromMs: 2000, untilMs: 2000 } },
      { unseen: [{ joint: 'left_hip', fromMs: 0, untilMs: 60_000 }] },
    ];
    for (const scene of scenes) {
      for (const value of numbersOf(film(scene).measurement)) expect(Number.isFinite(value)).toBe(true);
    }
    const empty: KeypointTrack = {
      ...film().track,
      timesMs: new Float64Array(),
      xPx: new Float32Array(),
      yPx: new Float32Array(),
      score: new Float32Array(),
    };
    const measurement = measure(empty, { task: 'single-leg-squat', side: 'left' });
    expect(measurement.repetitions).toEqual([]);
    expect(measurement.notes).toEqual([{ kind: 'no-person', framesWithPerson: 0, frames: 0 }]);
    for (const value of numbersOf(measurement)) expect(Number.isFinite(value)).toBe(true);
  });

  it('leaves what was observed alone', () => {
    const { track } = filmPerson({ noisePx: 1 });
    const before = structuredClone(track);
    measure(track, { task: 'single-leg-squat', side: 'left' });
    expect(track).toEqual(before);
  });
});

describe('measure(track, setup), whatever the film', { timeout: 30_000 }, () => {
  const scene = fc.record({
    task: fc.constantFrom(...taskIds),
    side: fc.constantFrom(...sides),
    peaksDeg: fc.array(fc.integer({ min: -15, max: 18 }), { minLength: 1, maxLength: 3 }),
    yawDeg: fc.integer({ min: -15, max: 15 }),
    offCentreM: fc.double({ min: -0.3, max: 0.3, noNaN: true }),
    noisePx: fc.constantFrom(0, 1.5),
    seed: fc.integer({ min: 1, max: 1000 }),
  });
  const shoot = ({
    peaksDeg,
    yawDeg,
    offCentreM,
    ...rest
  }: typeof scene extends fc.Arbitrary<infer T> ? T : never) =>
    filmPerson({
      ...rest,
      rateHz: 20,
      repetitions: peaksDeg.map((peakDeg) => ({ peakDeg })),
      camera: { yawDeg, offCentreM },
    }).track;
  /** Few runs: each films and measures some seconds of movement twice. */
  const runs = { numRuns: 12 };

  const same = (one: Measurement, other: Measurement) => {
    expect(other.repetitions.map(({ completeness }) => completeness)).toEqual(
      one.repetitions.map(({ completeness }) => completeness),
    );
    expect(other.kneeAngleDeg.missing).toEqual(one.kneeAngleDeg.missing);
    one.kneeAngleDeg.values.forEach((deg, i) =>
      expect(Math.abs(other.kneeAngleDeg.values[i]! - deg)).toBeLessThan(grainDeg),
    );
    one.kneeDeviation.values.forEach((share, i) =>
      expect(Math.abs(other.kneeDeviation.values[i]! - share)).toBeLessThan(1e-5),
    );
  };

  it('gives the mirrored film the same result for the other side', () => {
    fc.assert(
      fc.property(scene, (wish) => {
        const track = shoot(wish);
        same(
          measure(track, { task: wish.task, side: wish.side }),
          measure(mirrorTrack(track), { task: wish.task, side: otherSide(wish.side) }),
        );
      }),
      runs,
    );
  });

  it('gives a larger picture the same angles', () => {
    fc.assert(
      fc.property(scene, fc.double({ min: 0.25, max: 3, noNaN: true }), (wish, factor) => {
        const track = shoot(wish);
        const larger = {
          ...track,
          widthPx: track.widthPx * factor,
          heightPx: track.heightPx * factor,
          xPx: track.xPx.map((xPx) => xPx * factor),
          yPx: track.yPx.map((yPx) => yPx * factor),
        };
        same(measure(track, wish), measure(larger, wish));
      }),
      runs,
    );
  });

  it('gives the same angles for a person elsewhere in a wider picture', () => {
    fc.assert(
      fc.property(
        scene,
        fc.integer({ min: 0, max: 600 }),
        fc.integer({ min: 0, max: 300 }),
        (wish, right, down) => {
          const track = shoot(wish);
          const wider = {
            ...track,
            widthPx: track.widthPx + right,
            heightPx: track.heightPx + down,
            xPx: track.xPx.map((xPx) => xPx + right),
            yPx: track.yPx.map((yPx) => yPx + down),
          };
          same(measure(track, wish), measure(wider, wish));
        },
      ),
      runs,
    );
  });

  it('gives the same peaks when everything takes longer', () => {
    fc.assert(
      fc.property(scene, fc.double({ min: 1, max: 3, noNaN: true }), (wish, factor) => {
        const repetitions = wish.peaksDeg.map((peakDeg) => ({ peakDeg, movingMs: 3000 }));
        const { task, side } = wish;
        const usual = film({ task, side, repetitions });
        const slow = film({
          task,
          side,
          repetitions: repetitions.map(({ peakDeg }) => ({
            peakDeg,
            movingMs: 3000 * factor,
            pauseMs: 350 * factor,
          })),
          restMs: 900 * factor,
        });
        const [once, again] = [peaks(usual.measurement), peaks(slow.measurement)];
        expect(again).toHaveLength(once.length);
        once.forEach((deg, i) => expect(Math.abs(again[i]! - deg!)).toBeLessThan(smoothDeg));
      }),
      runs,
    );
  });
});
