import { describe, expect, it } from 'vitest';
import type { KeypointName } from '#core/keypoints/keypointNames';
import { distance } from '../../support/space';
import { filmPerson, mirrorTrack } from '../../support/syntheticPerson';
import { syntheticTasks } from '../../support/taskMotion';

/** The angle is found by halving an interval and looked for every 10 ms: its peak falls between two looks. */
const peakToleranceDeg = 0.15;
/** Positions are kept in 32-bit floats: 1280 px have a grain of 0.0001 px. */
const floatGrainPx = 0.001;

describe('filmPerson(scene)', () => {
  it.each(syntheticTasks)('gives the planned frontal angles in a %s', (task) => {
    const plannedDeg = [17, -9, 6];
    const { repetitions } = filmPerson({ task, repetitions: plannedDeg.map((peakDeg) => ({ peakDeg })) });
    const peaks = repetitions.map(({ frontal: { maxDeg, minDeg } }) => (maxDeg > -minDeg ? maxDeg : minDeg));
    expect(peaks).toHaveLength(3);
    peaks.forEach((deg, i) => expect(Math.abs(deg - plannedDeg[i]!)).toBeLessThan(peakToleranceDeg));
  });

  it.each(syntheticTasks)('keeps the lengths of limbs and feet in a %s', (task) => {
    const { frames } = filmPerson({ task, bodyHeightM: 1.6, pelvicDropDeg: 5, trunkSideDeg: 4 });
    // Drillis & Contini: thigh .245 x 1.6 = .392, shank .246 x 1.6 = .3936, trunk .288 x 1.6 = .4608 (middle to middle).
    const lengths: [KeypointName, KeypointName, number][] = [
      ['left_hip', 'left_knee', 0.392],
      ['right_hip', 'right_knee', 0.392],
      ['left_knee', 'left_ankle', 0.3936],
      ['right_knee', 'right_ankle', 0.3936],
      ['right_shoulder', 'right_elbow', 0.2976],
      ['left_hip', 'right_hip', 0.176],
      ['left_heel', 'left_foot_index', Math.hypot(0.0113, 0.003, 0.1173) * 1.6],
    ];
    for (const { places } of frames) {
      for (const [from, to, metres] of lengths)
        expect(distance(places[from], places[to])).toBeCloseTo(metres, 9);
    }
  });

  it('shows the yaw error that theory gives for a bent knee', () => {
    // Far away through a long lens perspective vanishes; with the knee in line the picture angle is then all error:
    // atan(tan a sin yaw) + atan(tan b sin yaw), thigh and shank a and b off plumb; for a = b = flexion / 2 this is
    // the known 2 atan(tan(flexion / 2) sin yaw), 11.5 degrees at 60 degrees of flexion and 10 of yaw.
    const sinYaw = Math.sin((10 * Math.PI) / 180);
    expect((2 * Math.atan(Math.tan(Math.PI / 6) * sinYaw) * 180) / Math.PI).toBeCloseTo(11.5, 1);
    const { frames } = filmPerson({
      task: 'two-legged-bend',
      repetitions: [{ peakDeg: 0, pauseMs: 500 }],
      camera: { yawDeg: 10, pitchDeg: 0, distanceM: 500, focalPx: 200_000 },
    });
    const deepest = frames.reduce((a, b) => (b.places.left_hip.y < a.places.left_hip.y ? b : a));
    const { left_hip: hip, left_knee: knee, left_ankle: ankle } = deepest.places;
    const thighTan = (knee.z - hip.z) / (hip.y - knee.y);
    const shankTan = (knee.z - ankle.z) / (knee.y - ankle.y);
    const errorDeg = ((Math.atan(thighTan * sinYaw) + Math.atan(shankTan * sinYaw)) * 180) / Math.PI;
    // Seen from the person's left, knees that point ahead go to the picture's left: inward for the left leg.
    expect(deepest.frontalDeg.left).toBeCloseTo(0, 3);
    expect(deepest.pictureDeg.left).toBeCloseTo(errorDeg, 1);
    expect(deepest.pictureDeg.right).toBeCloseTo(-errorDeg, 1);
  });

  it('gives the mirror image when side, yaw, roll and place are mirrored', () => {
    const asymmetric = { offCentreM: 0.21, yawDeg: 7, rollDeg: 2 };
    const left = filmPerson({ side: 'left', pelvicDropDeg: 3, walkInFrom: 1.1, camera: asymmetric });
    const right = filmPerson({
      side: 'right',
      pelvicDropDeg: 3,
      walkInFrom: -1.1,
      camera: { offCentreM: -0.21, yawDeg: -7, rollDeg: -2 },
    });
    const mirrored = mirrorTrack(right.track);
    left.track.xPx.forEach((xPx, i) => expect(Math.abs(xPx - mirrored.xPx[i]!)).toBeLessThan(floatGrainPx));
    left.track.yPx.forEach((yPx, i) => expect(Math.abs(yPx - mirrored.yPx[i]!)).toBeLessThan(floatGrainPx));
  });

  it('leaves the frontal angle alone whatever the camera does', () => {
    const square = filmPerson();
    const askew = filmPerson({ camera: { yawDeg: 25, pitchDeg: -8, rollDeg: 3, offCentreM: 0.4 } });
    expect(askew.repetitions[1]!.frontal).toEqual(square.repetitions[1]!.frontal);
    expect(askew.repetitions[1]!.picture).not.toEqual(square.repetitions[1]!.picture);
  });

  it('repeats itself for one seed and differs for another', () => {
    const [one, again, other] = [5, 5, 6].map((seed) => filmPerson({ noisePx: 2, seed }).track.xPx);
    expect(again).toEqual(one);
    expect(other).not.toEqual(one);
  });

  it('spreads noise as widely as asked', () => {
    const noisePx = 1.7;
    const clean = filmPerson().track;
    const noisy = filmPerson({ noisePx }).track;
    const squares = noisy.yPx.map((yPx, i) => (yPx - clean.yPx[i]!) ** 2);
    const rms = Math.sqrt(squares.reduce((a, b) => a + b) / squares.length);
    // Over 10,000 values the spread of the estimate is 1.7 / sqrt(20,000) = 0.012 px; four times that.
    expect(Math.abs(rms - noisePx)).toBeLessThan(0.05);
  });

  it('counts partial repetitions and passes over false starts', () => {
    const { repetitions } = filmPerson({
      repetitions: [{ peakDeg: 3 }, { peakDeg: 0, share: 0.15 }, { peakDeg: 5, share: 0.6 }],
    });
    expect(repetitions.map(({ completeness }) => completeness)).toEqual(['complete', 'partial']);
  });

  it('marks repetitions that the film cuts', () => {
    // One repetition from 900 to 3850 ms, the next from 4750 to 7700 ms, the last from 8600 to 11,550 ms.
    const { repetitions, frames } = filmPerson({ filmed: { fromMs: 1700, untilMs: 9500 } });
    expect(repetitions.map(({ completeness }) => completeness)).toEqual([
      'cut-at-start',
      'complete',
      'cut-at-end',
    ]);
    expect(repetitions[0]!.events).toMatchObject({ startMs: null, endMs: 2150 });
    expect(repetitions[2]!.events).toMatchObject({ startMs: 6900, endMs: null });
    expect(frames[0]!.timeMs).toBe(0);
    expect(frames.at(-1)!.timeMs).toBeCloseTo(7800, 6);
  });

  it('loses frames, unevenly timed', () => {
    const { track } = filmPerson({
      unevenness: 0.3,
      droppedShare: 0.2,
      dropped: [{ fromMs: 1000, untilMs: 1400 }],
    });
    const gapsMs = Array.from(track.timesMs.subarray(1), (timeMs, i) => timeMs - track.timesMs[i]!);
    expect(Math.min(...gapsMs)).toBeGreaterThan(0);
    expect(Math.max(...gapsMs)).toBeGreaterThan(390);
    // 12.45 s at 30 Hz are 374 frames, 12 lost in the gap, a fifth of the rest at random: about 290.
    expect(track.timesMs.length).toBeGreaterThan(260);
    expect(track.timesMs.length).toBeLessThan(320);
  });

  it('finds nobody before the person has walked in', () => {
    const { track } = filmPerson({ walkInFrom: 1.2 });
    expect(Math.max(...track.score.subarray(0, 33))).toBe(0);
    expect(Math.max(...track.score.subarray(-33))).toBeGreaterThan(0.9);
  });

  it('refuses an angle that a leg so little bent can not show', () => {
    expect(() => filmPerson({ repetitions: [{ peakDeg: 75, share: 0.3 }] })).toThrow(RangeError);
  });
});
