import { describe, expect, it } from 'vitest';
import { planSteps } from '#documents/plan/planSteps';
import { expectVideoBytes } from '#features/home/rules/expectVideoBytes';
import { smallHold, smallItem } from '../../../../support/smallPlan';

describe('expectVideoBytes(steps, bytesPerS)', () => {
  it('takes five seconds for a repetition, and half a minute around a set', () => {
    // Two sets of four: 2 · (30 s + 4 · 5 s) = 100 s
    const steps = planSteps([smallItem({ sets: 2, repetitions: 4 })]);
    expect(expectVideoBytes(steps, 7)).toBe(700);
  });

  it('takes the time of a tempo', () => {
    // One set of three: 30 s + 3 · (3 + 1 + 2) s = 48 s
    const tempo = { downSeconds: 3, pauseSeconds: 1, upSeconds: 2 };
    const steps = planSteps([smallItem({ sets: 1, repetitions: 3, tempo })]);
    expect(expectVideoBytes(steps, 2)).toBe(96);
  });

  it('is nothing for holds, and for no set', () => {
    expect(expectVideoBytes(planSteps([smallHold()]), 7)).toBe(0);
    expect(expectVideoBytes([], 7)).toBe(0);
  });
});
