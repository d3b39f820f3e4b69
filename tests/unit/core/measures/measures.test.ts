import { mean } from 'd3-array';
import { describe, expect, it } from 'vitest';
import { findTask, taskIds, type TaskId } from '#core/exercises/exercises';
import { measure } from '#core/measurement/measure';
import { mapMeasures, type MeasureId } from '#core/measures/measures';
import { pelvicDrop } from '#core/measures/pelvicDrop';
import { otherSide, sides, type Side } from '#core/protocol/side';
import type { CameraSettings } from '../../../support/pinholeCamera';
import { filmPerson, type TrueFrame } from '../../../support/syntheticPerson';

const [bodyHeightM, toeOutDeg] = [1.7, 7];
/** Thigh and shank of the synthetic person, m. */
const legM = 0.491 * bodyHeightM;
const toDeg = (rad: number) => (rad * 180) / Math.PI;

/** Held against the truth of the knee angle and its line: measure.test.ts. */
type HeldId = Exclude<MeasureId, 'knee-angle' | 'knee-off-line'>;

/** The same measures computed from the true places: m, x to the person's left, y up, z ahead. */
function truthOf({ places }: TrueFrame, side: Side, standingHipM: number): Record<HeldId, number> {
  const towardsMidline = side === 'left' ? -1 : 1;
  const own = (name: 'hip' | 'knee' | 'ankle' | 'shoulder') => places[`${side}_${name}`];
  const free = (name: 'hip' | 'ankle' | 'shoulder') => places[`${otherSide(side)}_${name}`];
  const half = (name: 'hip' | 'shoulder') => ({
    x: (own(name).x + free(name).x) / 2,
    y: (own(name).y + free(name).y) / 2,
  });
  // The foot points outward, away from the midline: its own right-angle direction, towards the midline.
  const footRad = (toeOutDeg * Math.PI) / 180;
  const across = { x: towardsMidline * Math.cos(footRad), z: Math.sin(footRad) };
  const [hips, shoulders] = [half('hip'), half('shoulder')];
  return {
    'knee-over-foot':
      ((own('knee').x - own('ankle').x) * across.x + (own('knee').z - own('ankle').z) * across.z) / legM,
    'hip-over-knee': (towardsMidline * (own('knee').x - own('hip').x)) / legM,
    'pelvic-drop': toDeg(Math.atan2(own('hip').y - free('hip').y, Math.abs(own('hip').x - free('hip').x))),
    'trunk-lean': toDeg(Math.atan2(-towardsMidline * (shoulders.x - hips.x), Math.abs(shoulders.y - hips.y))),
    'pelvis-place': (hips.x - free('ankle').x) / (own('ankle').x - free('ankle').x),
    depth: (standingHipM - own('hip').y) / legM,
  };
}

const films = new Map<string, ReturnType<typeof filmAndMeasure>>();

/** Each repetition's value, band and truth at the same moment; filmed once for all measures. */
function measured(task: TaskId, side: Side, camera: Partial<CameraSettings>) {
  const key = JSON.stringify([task, side, camera]);
  const film = films.get(key) ?? filmAndMeasure(task, side, camera);
  films.set(key, film);
  return film;
}

function filmAndMeasure(task: TaskId, side: Side, camera: Partial<CameraSettings>) {
  const film = filmPerson({ task, side, camera, pelvicDropDeg: 6, trunkSideDeg: 8, toeOutDeg });
  const standingHipM = Math.max(...film.frames.map(({ places }) => places[`${side}_hip`].y));
  const { repetitions } = measure(film.track, { task, side });
  expect(repetitions).toHaveLength(3);
  return repetitions.map(({ ranges }) => ({
    peaks: mapMeasures((id, { peak }) => peak(ranges[id])),
    truthAt: (sample: number) => truthOf(film.frames[sample]!, side, standingHipM),
  }));
}

const onBothFeet = taskIds.filter((id) => findTask(id).onBothFeet);
/** Hip abduction bends its stance leg all along, so that neither standing nor the segments' lengths are ever seen. */
const standing = taskIds.filter((id) => id !== 'hip-abduction-on-bent-leg');

const cameras: Partial<CameraSettings>[] = [
  {},
  { yawDeg: 10 },
  { yawDeg: -10 },
  { offCentreM: 0.2 },
  { offCentreM: -0.2 },
  { rollDeg: 1.5 },
  { rollDeg: -1.5 },
  { pitchDeg: 5 },
];
/** In which tasks each is held against the truth, from every camera. */
const holds: [HeldId, TaskId[]][] = [
  ['knee-over-foot', standing],
  ['hip-over-knee', standing],
  ['pelvic-drop', [...taskIds]],
  ['trunk-lean', [...taskIds]],
  ['pelvis-place', onBothFeet],
  ['depth', [...taskIds]],
];

describe.each(sides)('measure(track, setup).repetitions[].ranges, with the %s leg', (side) => {
  it.each(holds)(
    'gives %s, with its sign, within its own band in nine of ten cases',
    { timeout: 30_000 },
    (id, tasks) => {
      for (const camera of cameras) {
        const held = tasks.flatMap((task) =>
          measured(task, side, camera).flatMap(({ peaks, truthAt }) => {
            const extreme = peaks[id];
            if (extreme === null) return [];
            return Math.abs(extreme.value - truthAt(extreme.sample)[id]) <= extreme.band ? 1 : 0;
          }),
        );
        expect(held.length, JSON.stringify(camera)).toBeGreaterThan(tasks.length);
        expect(mean(held), JSON.stringify(camera)).toBeGreaterThanOrEqual(0.9);
      }
    },
  );

  it('distinguishes a dropped free hip and a trunk over the working leg from neither', () => {
    const task = 'single-leg-squat';
    const [level] = measure(filmPerson({ task, side }).track, { task, side }).repetitions;
    expect(Math.abs(pelvicDrop.peak(level!.ranges['pelvic-drop'])!.value)).toBeLessThan(0.5);
    const [dropped] = measured(task, side, {});
    expect(dropped!.peaks['pelvic-drop']!.value).toBeGreaterThan(5);
    expect(dropped!.peaks['trunk-lean']!.value).toBeGreaterThan(5);
  });

  it('gives the place of the pelvis only with both feet on the floor', () => {
    for (const task of taskIds.filter((id) => !findTask(id).onBothFeet)) {
      for (const { peaks } of measured(task, side, {})) expect(peaks['pelvis-place']).toBeNull();
    }
  });

  it('is missing where the person is turned too far', () => {
    for (const { peaks } of measured('single-leg-squat', side, { yawDeg: 38 }))
      expect(new Set(Object.values(peaks))).toEqual(new Set([null]));
  });
});
