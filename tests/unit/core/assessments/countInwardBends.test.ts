import { describe, expect, it } from 'vitest';
import { countInwardBends } from '#core/assessments/countInwardBends';
import { measure } from '#core/measurement/measure';
import { filmPerson } from '../../../support/syntheticPerson';

const setup = { task: 'single-leg-squat' as const, side: 'right' as const };

/** Bends of a stick person whose knee goes inward so far, degrees. */
function filmed(peaksDeg: readonly number[], side: 'left' | 'right' = 'right') {
  const { track } = filmPerson({ ...setup, side, repetitions: peaksDeg.map((peakDeg) => ({ peakDeg })) });
  return measure(track, setup);
}
const classesOf = (peaksDeg: readonly number[]) => countInwardBends(filmed(peaksDeg), []);

describe('countInwardBends(measurement, excluded)', () => {
  it('counts the bends in which the knee was inward of the foot', () => {
    expect(classesOf([15, -12, 14, 16, -10])).toMatchObject({
      kind: 'counted',
      bends: [true, false, true, true, false].map((isInward) => ({ isInward })),
      inward: 3,
      found: 'inward',
      more: 0,
    });
    expect(classesOf([-12, 15, -11, -12, -10])).toMatchObject({ inward: 1, found: 'over' });
  });

  it('gives no number where a bend is too close to the line, and a class only where it can’t change that', () => {
    const close = classesOf([15, 14, 16, 3, -12]);
    expect(close).toMatchObject({ inward: null, found: 'inward' });
    expect(classesOf([15, 3, 14, 3, -12])).toMatchObject({ inward: null, found: null });
    if (close.kind === 'counted') expect(close.bends.map(({ isInward }) => isInward)).toContain(null);
  });

  it('takes the first five that are complete and count', () => {
    const measurement = filmed([15, -12, 14, 16, -10, -11, 15]);
    expect(countInwardBends(measurement, [])).toMatchObject({ inward: 3, more: 2 });
    // Without the first: -12, 14, 16, -10, -11.
    expect(countInwardBends(measurement, ['a practice bend'])).toMatchObject({ inward: 2, more: 1 });
  });

  it('says nothing of fewer than five, or where the other leg seems to have worked', () => {
    expect(classesOf([15, 14, 16, 12])).toEqual({ kind: 'too-few-bends', bends: 4 });
    const measurement = filmed([15, -12, 14, 16, -10]);
    const notes = [{ kind: 'side-doubtful' as const, side: 'left' as const }];
    expect(countInwardBends({ ...measurement, notes }, [])).toEqual({ kind: 'other-leg' });
  });

  it('does not take a bend for over the foot where the knee was not seen at its lowest', () => {
    const measurement = filmed([-12, -12, -12, -12, -12]);
    const sample = measurement.repetitions[1]!.ranges.depth.max!.sample;
    measurement.curves['knee-over-foot'].missing[sample] = 2;
    expect(countInwardBends(measurement, [])).toMatchObject({
      bends: [false, null, false, false, false].map((isInward) => ({ isInward })),
      inward: null,
      found: 'over',
    });
  });

  it('tells about how far the knee bent', () => {
    const count = classesOf([15, 15, 15, 15, 15]);
    expect(count.kind).toBe('counted');
    if (count.kind !== 'counted') return;
    for (const { bendDeg } of count.bends) {
      expect(bendDeg).toBeGreaterThan(50);
      expect(bendDeg).toBeLessThan(100);
    }
  });
});
