import { mean, median } from 'd3-array';
import { describe, expect, it } from 'vitest';
import { taskIds, type TaskId } from '#core/exercises/exercises';
import { curveValue } from '#core/measurement/curve';
import { measure } from '#core/measurement/measure';
import { sides } from '#core/protocol/side';
import type { CameraSettings } from '../../../support/pinholeCamera';
import { filmPerson, type Scene } from '../../../support/syntheticPerson';

const plannedDeg = [3, 17, -11, 8];
const repetitions = plannedDeg.map((peakDeg) => ({ peakDeg, movingMs: 4000 }));

type Filmed = Partial<Omit<Scene, 'task' | 'side'>>;

/** Error of each peak and half-width of its band, both legs in turn. */
function errorsOf(task: TaskId, scene: Filmed) {
  return sides.flatMap((side) => {
    const film = filmPerson({ task, side, repetitions, ...scene });
    const found = measure(film.track, { task, side }).repetitions;
    expect(found).toHaveLength(plannedDeg.length);
    return plannedDeg.map((deg, i) => {
      const { min, max } = found[i]!.ranges['knee-angle'];
      const { maxDeg, minDeg } = film.repetitions[i]!.frontal;
      const { value, band } = deg < 0 ? min! : max!;
      return { errorDeg: value - (deg < 0 ? minDeg : maxDeg), bandDeg: band };
    });
  });
}
const meanErrorDeg = (task: TaskId, scene: Filmed) =>
  mean(errorsOf(task, scene), ({ errorDeg }) => Math.abs(errorDeg))!;

/**
 * What is aimed at with a camera that is square, turned up to 10 and up to 20 degrees. Without errors of the joints,
 * what is left is: a stance that is not quite straight, whose parallax of 0.7 to 0.9 degrees is taken off the bent knee
 * of a squat too; a camera that looks up by 2 degrees (0.3); a lens of 1229 px taken for 1152 (0.2 square, more to the
 * side); thigh and shank read 1 to 3 % short, which makes a turned, bent leg look too little bent (1 at 20 degrees).
 */
const goalDeg = { square: 1.5, upTo10: 2, upTo20: 3 };
const yawGoals = [
  [0, goalDeg.square],
  [5, goalDeg.upTo10],
  [-5, goalDeg.upTo10],
  [10, goalDeg.upTo10],
  [-10, goalDeg.upTo10],
  [20, goalDeg.upTo20],
  [-20, goalDeg.upTo20],
] as const;

describe('measure(track, setup), filmed from anywhere', { timeout: 30_000 }, () => {
  /** Tasks whose yaw is shown by more than one stance foot; the others are worse by what that foot is off. */
  const told: TaskId[] = ['split-stance-sit-to-stand', 'single-leg-squat', 'two-legged-bend'];
  it.each(told.flatMap((task) => yawGoals.map(([yawDeg, goal]) => [task, yawDeg, goal] as const)))(
    'recovers the frontal peak of a %s at a yaw of %d degrees, to %d degrees on average',
    (task, yawDeg, goal) => {
      expect(meanErrorDeg(task, { camera: { yawDeg } })).toBeLessThan(goal);
    },
  );

  const stands: Partial<CameraSettings>[] = [
    { distanceM: 2.1 },
    { distanceM: 3.5 },
    { heightM: 0.5 },
    { heightM: 1.2 },
    { rollDeg: 3 },
    { rollDeg: -3 },
    { offCentreM: 0.2 },
    { offCentreM: -0.2 },
    { pitchDeg: -5 },
    { pitchDeg: 6 },
  ];
  it.each(stands)('recovers the frontal peak of sit-to-stands with %o', (camera) => {
    for (const task of ['split-stance-sit-to-stand', 'single-leg-sit-to-stand'] as const)
      expect(meanErrorDeg(task, { camera })).toBeLessThan(goalDeg.upTo10);
  });

  it.each(taskIds)('holds the truth of a %s within its band in nine of ten noisy repetitions', (task) => {
    const cameras = yawGoals.map(([yawDeg], i) => ({ yawDeg, heightM: 0.6 + 0.1 * i }));
    const errors = cameras.flatMap((camera, i) => errorsOf(task, { camera, noisePx: 1.5, seed: 40 + i }));
    const covered = errors.filter(({ errorDeg, bandDeg }) => Math.abs(errorDeg) <= bandDeg);
    expect(errors).toHaveLength(7 * 2 * 4);
    expect(covered.length / errors.length).toBeGreaterThanOrEqual(0.9);
  });

  it('gives no angle of a person turned by 35 degrees in any task, and says about how far', () => {
    for (const task of taskIds) {
      for (const yawDeg of [-35, 35]) {
        const { repetitions: found, notes } = measure(filmPerson({ task, camera: { yawDeg } }).track, {
          task,
          side: 'left',
        });
        expect(
          found.map(({ ranges }) => [ranges['knee-angle'].max, ranges['knee-angle'].mainReason]),
        ).toEqual(new Array(3).fill([null, 'view-turned']));
        const note = notes.find(({ kind }) => kind === 'view-turned') as { yawDeg: number; sdDeg: number };
        // A camera on the person's left sees their front point to the picture's left: negative.
        expect(Math.abs(note.yawDeg + yawDeg)).toBeLessThan(2 * note.sdDeg);
      }
    }
  });
});

describe('measure(track, setup) of a leg that never quite straightens', () => {
  /** The offset is a median over the quiet stance; the body still moves a little at either end of that. */
  const quietDeg = 0.3;
  it.each([
    ['single-leg-squat', 5],
    ['single-leg-squat', -4],
    ['two-legged-bend', 5],
    ['lateral-step-down', 3],
  ] as const)('reads 0 in standing for a %s with %d degrees all along', (task, standingDeg) => {
    const film = filmPerson({ task, standingDeg, repetitions: [{ peakDeg: 2 }, { peakDeg: 6 }] });
    const measured = measure(film.track, { task, side: 'left' });
    const rest = [...measured.timesMs.keys()].filter((i) => {
      const timeMs = measured.timesMs[i]!;
      return film.repetitions.every(({ events }) => timeMs < events.startMs! || timeMs > events.endMs!);
    });
    expect(Math.abs(median(rest, (i) => curveValue(measured.curves['knee-angle'], i))!)).toBeLessThan(
      quietDeg,
    );
    // What was taken off is the angle itself, less the parallax of a knee ahead (goalDeg above).
    expect(Math.abs(measured.view!.standingOffsetDeg - standingDeg)).toBeLessThan(1.2);
  });
});
