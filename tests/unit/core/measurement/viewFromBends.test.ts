import { describe, expect, it } from 'vitest';
import type { TaskId } from '#core/exercises/exercises';
import { measure } from '#core/measurement/measure';
import { viewFromBends } from '#core/measurement/viewFromBends';
import { defaultLimits } from '#core/protocol/limits';
import { judge } from '#core/scoring/judge';
import type { BendsView } from '#core/view/bendsView';
import { filmPerson, type Scene } from '../../../support/syntheticPerson';
import { unfit } from '../../../support/unfitWords';

const bends = [
  { peakDeg: 3, movingMs: 3000 },
  { peakDeg: 3, movingMs: 3000 },
];
const outcome = (scene: Partial<Scene> = {}) =>
  viewFromBends(filmPerson({ task: 'two-legged-bend', noisePx: 1, repetitions: bends, ...scene }).track);

function viewOf(scene: Partial<Scene>): BendsView {
  const { view, problem } = outcome(scene);
  if (view === null) throw new Error(problem);
  return view;
}

/** A set with and without bends before it, filmed by the same camera: errors of the yaw and of the peaks, refusals. */
function compare(task: TaskId, toeOutDeg: number, yawDeg: number) {
  const camera = { yawDeg };
  const film = filmPerson({ task, side: 'left', toeOutDeg, camera, noisePx: 1, seed: 5 });
  const results = [undefined, viewOf({ toeOutDeg, camera })].map((known) => {
    const measured = measure(film.track, { task, side: 'left', bends: known });
    const peaks = measured.repetitions.map(({ ranges }, i) => ({
      errorDeg: Math.abs(ranges['knee-angle'].max!.value - film.repetitions[i]!.frontal.maxDeg),
      bandDeg: ranges['knee-angle'].max!.band,
    }));
    const refused = measured.repetitions.filter(
      (one) => judge(one, measured, defaultLimits).reason !== null,
    ).length;
    return {
      yawErrorDeg: Math.abs(measured.view!.yawDeg + yawDeg),
      peaks,
      refused,
      cues: measured.view!.cues,
    };
  });
  return { without: results[0]!, with: results[1]! };
}

/** What is left of the yaw's error where nothing has moved between bends and set, degrees. */
const carriedDeg = 1.5;

describe('viewFromBends(track)', () => {
  it.each([-12, -5, 0, 5, 12])('finds a yaw of %d degrees whatever the toes do', (yawDeg) => {
    for (const toeOutDeg of [0, 7, 20]) {
      const view = viewOf({ toeOutDeg, camera: { yawDeg } });
      expect(Math.abs(view.yawDeg + yawDeg)).toBeLessThan(1);
      // Surer than one foot, less sure than the spread over real people.
      expect(view.sdDeg).toBeGreaterThan(1.8);
      expect(view.sdDeg).toBeLessThan(3);
    }
  });

  it('is less sure the less the knees bend', () => {
    const shallow = viewOf({ repetitions: bends.map((bend) => ({ ...bend, share: 0.5 })) });
    expect(shallow.sdDeg).toBeGreaterThan(viewOf({}).sdDeg);
  });

  it('keeps how each foot pointed, so that the left one that turns out more points farther to the right', () => {
    const [straight, out] = [viewOf({ toeOutDeg: 0 }), viewOf({ toeOutDeg: 20 })];
    expect(out.footDeg.left! - straight.footDeg.left!).toBeGreaterThan(12);
    expect(out.footDeg.right! - straight.footDeg.right!).toBeLessThan(-12);
  });

  it.each([
    ['nothing moves', { repetitions: [] }, /Two bends were not seen/],
    ['there is one bend', { repetitions: bends.slice(1) }, /Two bends were not seen/],
    ['nobody is there', { camera: { pitchDeg: 60 } }, /Two bends were not seen/],
    ['a leg is hidden', { unseen: [{ joint: 'right_ankle', fromMs: 0, untilMs: 1e6 }] }, /Both legs/],
  ] as const)('says what to do where %s', (_, scene, says) => {
    const { view, problem } = outcome(scene);
    expect(view).toBeNull();
    expect(problem).toMatch(says);
    expect(problem).not.toMatch(unfit);
  });
});

describe('measure(track, setup) with bends before the set', { timeout: 60_000 }, () => {
  const toes = [0, 5, 10, 15, 20];
  it.each([
    ['single-leg-squat', 'stance-foot'],
    ['lateral-step-down', 'stance-foot'],
    ['sliding-leg-squat', 'stance-foot'],
  ] as const)('tells the yaw of a %s from them and no longer from the %s', (task, sign) => {
    const { with: known, without } = compare(task, 20, 5);
    expect(without.cues.map(({ name }) => name)).toContain(sign);
    expect(known.cues.map(({ name }) => name)).toContain('bends');
    expect(known.cues.map(({ name }) => name)).not.toContain(sign);
  });

  it.each(['single-leg-squat', 'lateral-step-down'] as const)(
    'keeps the yaw of a %s true for toes turned out by 0 to 20 degrees',
    (task) => {
      const compared = toes.flatMap((toeOutDeg) =>
        [-8, 0, 8].map((yawDeg) => compare(task, toeOutDeg, yawDeg)),
      );
      const worst = (of: 'with' | 'without') => Math.max(...compared.map((one) => one[of].yawErrorDeg));
      expect(worst('with')).toBeLessThan(carriedDeg);
      expect(worst('without')).toBeGreaterThan(2 * worst('with'));
      const mean = (of: 'with' | 'without') =>
        compared.reduce((sum, one) => sum + one[of].yawErrorDeg, 0) / compared.length;
      expect(mean('with')).toBeLessThan(mean('without') / 2);
    },
  );

  it('measures what is refused or off without them: toes turned out by 20 degrees', () => {
    for (const task of ['single-leg-squat', 'lateral-step-down', 'sliding-leg-squat'] as const) {
      const { with: known, without } = compare(task, 20, -8);
      expect(known.refused).toBe(0);
      known.peaks.forEach(({ errorDeg, bandDeg }) => expect(errorDeg).toBeLessThan(bandDeg));
      const worstDeg = (peaks: typeof known.peaks) => Math.max(...peaks.map(({ errorDeg }) => errorDeg));
      expect(worstDeg(known.peaks)).toBeLessThan(worstDeg(without.peaks) / 1.5);
    }
  });

  it('follows a foot that points elsewhere than in the bends half of the way, and is less sure where it is unseen', () => {
    const { track } = filmPerson({ task: 'lateral-step-down', side: 'left', toeOutDeg: 7 });
    const cueOf = (view: BendsView) =>
      measure(track, { task: 'lateral-step-down', side: 'left', bends: view }).view!.cues.find(
        ({ name }) => name === 'bends',
      )!;
    const known = viewOf({ toeOutDeg: 7, noisePx: 0 });
    const turned = { ...known, footDeg: { ...known.footDeg, left: known.footDeg.left! - 6 } };
    expect(cueOf(turned).yawDeg - cueOf(known).yawDeg).toBeCloseTo(3, 6);
    const unseen = cueOf({ ...known, footDeg: { left: null, right: null } });
    expect(unseen.yawDeg).toBe(known.yawDeg);
    expect(unseen.sdDeg).toBeGreaterThan(cueOf(known).sdDeg);
  });

  it('leaves a task that needs no stance foot as it is', () => {
    const setup = { task: 'split-stance-sit-to-stand', side: 'left' } as const;
    const { track } = filmPerson({ ...setup, toeOutDeg: 20 });
    expect(measure(track, { ...setup, bends: viewOf({}) }).view).toEqual(measure(track, setup).view);
  });
});
