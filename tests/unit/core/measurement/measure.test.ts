import { mean } from 'd3-array';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findTask, taskIds, type TaskId } from '#core/exercises/exercises';
import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import { curveReason, type Curve, type MissingReason } from '#core/measurement/curve';
import { measure } from '#core/measurement/measure';
import type { MeasuredRepetition, Measurement } from '#core/measurement/measurement';
import { kneeOffLine } from '#core/measures/kneeOffLine';
import { otherSide, sides } from '#core/protocol/side';
import { filmPerson, mirrorTrack, type Scene, type TrueRepetition } from '../../../support/syntheticPerson';

/**
 * Mean absolute error of the peak with the camera square and joints seen without error, by what shows the yaw: goal 1.5
 * degrees where both thighs or none is needed, 2 where a lifted shank does; where only a foot does, its turning out is
 * the person's own (the synthetic one reads 1 to 2.5 degrees off) and the band is what is promised.
 */
const squareGoalDeg: Partial<Record<TaskId, number>> = {
  'split-stance-sit-to-stand': 1.5,
  'single-leg-sit-to-stand': 1.5,
  'two-legged-bend': 1.5,
  'single-leg-squat': 2,
  'hip-abduction-on-bent-leg': 1.5,
};
/** Positions are kept in 32 bits: a grain of 0.0001 px on a thigh of 120 px, and four times that once lifted. */
const grainDeg = 0.005;
/** The same as a share of the leg: an angle of 0.005 degrees moves the knee by 0.0001 of a thigh or shank. */
const grainShare = 1e-4;
/** The low-pass at 6 Hz and a base of 30 Hz flatten the peak of an unhurried repetition by no more than this. */
const smoothDeg = 0.3;

type FilmedScene = Partial<Omit<Scene, 'task'>> & { task?: TaskId };

function film(scene: FilmedScene = {}) {
  const { task = 'single-leg-squat', side = 'left' } = scene;
  const filmed = filmPerson({ task, side, ...scene });
  return Object.assign(filmed, { measurement: measure(filmed.track, { task, side }) });
}

const peakOf = ({ ranges }: MeasuredRepetition, plannedDeg: number) =>
  plannedDeg < 0 ? ranges['knee-angle'].min! : ranges['knee-angle'].max!;
const truePeakOf = ({ frontal }: TrueRepetition, plannedDeg: number) =>
  plannedDeg < 0 ? frontal.minDeg : frontal.maxDeg;
/** Error and half-width of the band of each repetition's peak. */
const errorsOf = ({ measurement, repetitions }: ReturnType<typeof film>, plannedDeg: number[]) =>
  plannedDeg.map((deg, i) => {
    const { value, band } = peakOf(measurement.repetitions[i]!, deg);
    return { errorDeg: value - truePeakOf(repetitions[i]!, deg), bandDeg: band };
  });

const peaks = ({ repetitions }: Measurement) =>
  repetitions.map(({ ranges }) => ranges['knee-angle'].max?.value ?? null);
const kinds = ({ notes }: Measurement) => notes.map(({ kind }) => kind);
const reasonsIn = (curve: Curve, { timesMs }: Measurement, fromMs: number, untilMs: number) => {
  const reasons = new Set<MissingReason | null>();
  timesMs.forEach((timeMs, i) => {
    if (timeMs > fromMs && timeMs < untilMs) reasons.add(curveReason(curve, i));
  });
  return [...reasons];
};

/** Every number of a measurement that must be one. */
function numbersOf({ timesMs, rateHz, curves, repetitions }: Measurement): number[] {
  const extremes = repetitions.flatMap(({ ranges }) =>
    Object.values(ranges).flatMap(({ min, max, measuredShare }) => [
      measuredShare,
      ...[min, max].map((extreme) => extreme?.value ?? 0),
    ]),
  );
  return [rateHz, ...timesMs, ...Object.values(curves).flatMap(({ values }) => [...values]), ...extremes];
}

describe('measure(track, setup)', () => {
  const plannedDeg = [3, 17, -11, 8];
  const plan = plannedDeg.map((peakDeg) => ({ peakDeg, movingMs: 4000 }));

  describe.each(sides)('with the %s leg', (side) => {
    it.each(taskIds)('recovers the frontal angle of a %s, within its own band', (task) => {
      const result = film({ task, side, repetitions: plan });
      expect(
        result.measurement.repetitions.map(({ completeness, number }) => [completeness, number]),
      ).toEqual([1, 2, 3, 4].map((number) => ['complete', number]));
      const errors = errorsOf(result, plannedDeg);
      for (const { errorDeg, bandDeg } of errors) expect(Math.abs(errorDeg)).toBeLessThan(bandDeg);
      const goalDeg = squareGoalDeg[task];
      if (goalDeg !== undefined)
        expect(mean(errors, ({ errorDeg }) => Math.abs(errorDeg))).toBeLessThan(goalDeg);
      expect(result.measurement.notes).toEqual([]);
    });
  });

  it('covers the truth in nine of ten repetitions, wherever the camera is', { timeout: 30_000 }, () => {
    const stands = [
      { yawDeg: -10, rollDeg: 2 },
      { yawDeg: 10, offCentreM: 0.2, heightM: 0.6 },
      { yawDeg: 4, pitchDeg: -3, heightM: 1.1, distanceM: 3.2 },
    ];
    const errors = taskIds.flatMap((task, i) =>
      stands.flatMap((camera, j) => {
        const side = sides[(i + j) % 2]!;
        return errorsOf(
          film({ task, side, camera, noisePx: 1, seed: 10 * i + j, repetitions: plan }),
          plannedDeg,
        );
      }),
    );
    expect(errors).toHaveLength(taskIds.length * 3 * 4);
    const covered = errors.filter(({ errorDeg, bandDeg }) => Math.abs(errorDeg) <= bandDeg);
    expect(covered.length / errors.length).toBeGreaterThanOrEqual(0.9);
  });

  it('gives bands narrower than the error of the plain picture', () => {
    const camera = { yawDeg: 12 };
    const result = film({ task: 'split-stance-sit-to-stand', camera, repetitions: plan });
    const pictureOff = result.repetitions.map(({ picture, frontal }) =>
      Math.abs(picture.maxDeg - frontal.maxDeg),
    );
    const errors = errorsOf(result, plannedDeg);
    expect(mean(errors, ({ errorDeg }) => Math.abs(errorDeg))).toBeLessThan(mean(pictureOff)! / 3);
    expect(mean(errors, ({ bandDeg }) => bandDeg)).toBeLessThan(mean(pictureOff)!);
  });

  it('reads the yaw between body and camera off the thighs', () => {
    for (const yawDeg of [-15, -4, 0, 9, 18]) {
      const { view } = film({ task: 'split-stance-sit-to-stand', camera: { yawDeg } }).measurement;
      // A camera on the person's left sees their front point to the picture's left: negative.
      expect(Math.abs(view!.yawDeg + yawDeg)).toBeLessThan(2 * view!.sdDeg);
    }
  });

  it('gives no angle where the person is turned too far, and says about how far', () => {
    const { measurement } = film({ task: 'split-stance-sit-to-stand', camera: { yawDeg: 38 } });
    for (const { ranges } of measurement.repetitions)
      expect(ranges['knee-angle']).toMatchObject({ max: null, mainReason: 'view-turned', measuredShare: 0 });
    const [note] = measurement.notes.filter(({ kind }) => kind === 'view-turned');
    expect(note).toBeDefined();
    expect(Math.abs(Math.abs((note as { yawDeg: number }).yawDeg) - 38)).toBeLessThan(8);
  });

  it('gives wider bands the more the joints tremble', () => {
    const bandsDeg = [0, 2, 4, 8].map((noisePx) => {
      const { measurement } = film({
        task: 'split-stance-sit-to-stand',
        noisePx,
        repetitions: [{ peakDeg: 12 }],
      });
      return measurement.repetitions[0]!.ranges['knee-angle'].max!.band;
    });
    expect(bandsDeg).toEqual(bandsDeg.toSorted((a, b) => a - b));
    expect(bandsDeg[3]).toBeGreaterThan(1.2 * bandsDeg[0]!);
  });

  it('recovers it through pixel noise, uneven times and single lost frames', () => {
    const result = film({
      task: 'split-stance-sit-to-stand',
      noisePx: 1,
      unevenness: 0.3,
      droppedShare: 0.1,
      seed: 8,
      repetitions: plan,
    });
    expect(result.measurement.repetitions).toHaveLength(4);
    for (const { errorDeg, bandDeg } of errorsOf(result, plannedDeg))
      expect(Math.abs(errorDeg)).toBeLessThan(bandDeg);
  });

  it.each([10, 15, 24, 25, 30, 50, 60])('finds the repetitions in %d frames a second', (rateHz) => {
    const result = film({ rateHz, repetitions: plan });
    expect(result.measurement.repetitions).toHaveLength(4);
    expect(kinds(result.measurement)).toEqual(rateHz < 15 ? ['few-frames'] : []);
    for (const { errorDeg, bandDeg } of errorsOf(result, plannedDeg))
      expect(Math.abs(errorDeg)).toBeLessThan(bandDeg);
  });

  it('measures how far the knee is off the line from hip to ankle, in shares of the leg', () => {
    const { measurement, frames } = film({ task: 'split-stance-sit-to-stand' });
    const kneeDeviation = kneeOffLine.peak(measurement.repetitions[1]!.ranges['knee-off-line']);
    const { left_hip: hip, left_knee: knee, left_ankle: ankle } = frames[kneeDeviation!.sample]!.places;
    // Distance of the knee from the line, from the area of the triangle in the frontal plane: twice the area over the
    // base; leg of .491 x 1.7 m.
    const twiceArea = Math.abs(
      hip.x * (knee.y - ankle.y) + knee.x * (ankle.y - hip.y) + ankle.x * (hip.y - knee.y),
    );
    const trueShare = twiceArea / Math.hypot(hip.x - ankle.x, hip.y - ankle.y) / (0.491 * 1.7);
    expect(kneeDeviation!.value).toBeGreaterThan(0);
    expect(Math.abs(kneeDeviation!.value - trueShare)).toBeLessThan(kneeDeviation!.band);
    // 0.835 m, 2.7 m away through 1229 px: about 380 px.
    expect(measurement.legLengthPx).toBeGreaterThan(360);
    expect(measurement.legLengthPx).toBeLessThan(400);
  });

  it('notes which side is in doubt', () => {
    for (const task of taskIds.filter((id) => findTask(id).workingFoot !== 'either')) {
      const { track } = film({ task, side: 'right' });
      expect(kinds(measure(track, { task, side: 'right' }))).toEqual([]);
      expect(measure(track, { task, side: 'left' }).notes).toContainEqual({
        kind: 'side-doubtful',
        side: 'left',
      });
    }
  });

  it('has no doubt about the side of a task in which both legs work', () => {
    const { track } = film({ task: 'two-legged-bend', side: 'right' });
    for (const side of sides) expect(kinds(measure(track, { task: 'two-legged-bend', side }))).toEqual([]);
  });

  it('notes that nobody is found', () => {
    const { track } = film({ camera: { offCentreM: 9 } });
    const frames = track.timesMs.length;
    const measurement = measure(track, { task: 'single-leg-squat', side: 'left' });
    expect(measurement.notes).toEqual([{ kind: 'no-person', framesWithPerson: 0, frames }]);
    expect(measurement.repetitions).toEqual([]);
  });

  it('notes that nobody moves', () => {
    const { measurement } = film({ repetitions: [], restMs: 3000 });
    expect(measurement.notes).toEqual([{ kind: 'no-repetitions' }]);
  });

  it('notes that the feet are out of the picture', () => {
    const { measurement } = film({ camera: { heightPx: 1280, pitchDeg: 17 } });
    expect(measurement.notes).toContainEqual({ kind: 'legs-not-seen', reason: 'out-of-picture' });
    for (const { ranges } of measurement.repetitions)
      expect(ranges['knee-angle']).toMatchObject({
        max: null,
        mainReason: 'out-of-picture',
        measuredShare: 0,
      });
  });

  it('gives the reason where a joint is unseen, and no number', () => {
    const { measurement } = film({ unseen: [{ joint: 'left_knee', fromMs: 5000, untilMs: 7000 }] });
    expect(reasonsIn(measurement.curves['knee-angle'], measurement, 5050, 6900)).toEqual(['joint-unseen']);
    const [first, second] = measurement.repetitions;
    expect(first!.ranges['knee-angle']).toMatchObject({ measuredShare: 1, mainReason: null });
    expect(second!.ranges['knee-angle'].measuredShare).toBeLessThan(0.5);
    expect(second!.ranges['knee-angle'].mainReason).toBe('joint-unseen');
  });

  it('measures the working leg where a joint of the other is unseen', () => {
    const { measurement } = film({ unseen: [{ joint: 'right_knee', fromMs: 0, untilMs: 60_000 }] });
    expect(measurement.repetitions.map(({ ranges }) => ranges['knee-angle'].measuredShare)).toEqual([
      1, 1, 1,
    ]);
  });

  it('gives the reason where frames were lost, and bridges a short hole', () => {
    const long = film({ dropped: [{ fromMs: 2000, untilMs: 2600 }] }).measurement;
    expect(reasonsIn(long.curves['knee-angle'], long, 2010, 2590)).toEqual(['frames-missing']);
    const short = film({ dropped: [{ fromMs: 2000, untilMs: 2090 }] }).measurement;
    expect(reasonsIn(short.curves['knee-angle'], short, 0, 60_000)).toEqual([null]);
  });

  it('leaves out the time in which somebody else is followed', () => {
    const { measurement, track } = film({ somebodyElse: [{ fromMs: 3900, untilMs: 4700 }] });
    expect(reasonsIn(measurement.curves['knee-angle'], measurement, 3910, 4650)).toEqual(['tracking-jumped']);
    const frames = track.timesMs.filter((timeMs) => timeMs >= 3900 && timeMs < 4700).length;
    expect(measurement.notes).toContainEqual({ kind: 'somebody-else', frames });
    expect(measurement.repetitions).toHaveLength(3);
  });

  it('gives no angle while the thigh points at the camera', () => {
    const { measurement, repetitions } = film({ task: 'split-stance-sit-to-stand' });
    const { startMs, topMs, topEndMs } = repetitions[0]!.events;
    expect(reasonsIn(measurement.curves['knee-angle'], measurement, 0, startMs!)).toEqual([
      'thigh-foreshortened',
    ]);
    expect(reasonsIn(measurement.curves['knee-angle'], measurement, topMs!, topEndMs!)).toEqual([null]);
    expect(reasonsIn(measurement.curves['knee-off-line'], measurement, 0, startMs!)).toEqual([null]);
  });

  it('finds the repetitions of somebody who walks in and out', () => {
    const { measurement } = film({ walkInFrom: 1.2, walkOutTo: 1.2 });
    expect(measurement.repetitions.map(({ completeness }) => completeness)).toEqual(
      new Array(3).fill('complete'),
    );
  });

  it('never gives NaN or infinity', () => {
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

  it('does not change what was observed', () => {
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
    expect(other.curves['knee-angle'].missing).toEqual(one.curves['knee-angle'].missing);
    one.curves['knee-angle'].values.forEach((deg, i) =>
      expect(Math.abs(other.curves['knee-angle'].values[i]! - deg)).toBeLessThan(grainDeg),
    );
    one.curves['knee-off-line'].values.forEach((share, i) =>
      expect(Math.abs(other.curves['knee-off-line'].values[i]! - share)).toBeLessThan(grainShare),
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

  it('gives the same angles within the bands when the camera moves aside or leans', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...sides),
        fc.double({ min: -0.3, max: 0.3, noNaN: true }),
        fc.double({ min: -3, max: 3, noNaN: true }),
        (side, offCentreM, rollDeg) => {
          const task = 'split-stance-sit-to-stand';
          const repetitions = [{ peakDeg: 14 }];
          const [square, moved] = [{}, { offCentreM, rollDeg }].map(
            (camera) =>
              film({ task, side, repetitions, camera }).measurement.repetitions[0]!.ranges['knee-angle'].max!,
          );
          expect(Math.abs(moved!.value - square!.value)).toBeLessThan(square!.band);
        },
      ),
      runs,
    );
  });

  it('gives the same peaks when everything is slower', () => {
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
