import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { eyeAgreement, eyeRepeat, type JudgedByEye, type JudgedTwice } from '#core/reliability/eyeAgreement';
import { verdicts, type Verdict } from '#core/scoring/verdict';

const times = (count: number, eye: 'in' | 'out', measured: Verdict): JudgedByEye[] =>
  Array.from({ length: count }, () => ({ eye, measured }));

describe('eyeAgreement(judged)', () => {
  it('counts by side, and gives kappa of what both name a side of', () => {
    // 9 + 6 alike of 20; chance (12 x 11 + 8 x 9) / 400 = .51; (.75 - .51) / .49 = .4898.
    const { counts, untold, kappa } = eyeAgreement([
      ...times(5, 'in', 'in'),
      ...times(4, 'in', 'probably-in'),
      ...times(3, 'in', 'out'),
      ...times(2, 'out', 'in'),
      ...times(6, 'out', 'probably-out'),
      ...times(2, 'out', 'cant-tell'),
      ...times(1, 'in', 'not-measured'),
    ]);
    expect(counts).toEqual({ bothIn: 9, bothOut: 6, outByEye: 2, outByMeasuring: 3 });
    expect(untold).toBe(3);
    expect(kappa).toMatchObject({ count: 20, agreement: 0.75 });
    expect((kappa as { kappa: number }).kappa).toBeCloseTo(0.4898, 4);
  });

  it('gives no kappa below 10 repetitions of which a side is named, nor where one class was used throughout', () => {
    expect(eyeAgreement([...times(5, 'in', 'in'), ...times(4, 'out', 'out')]).kappa).toBe('too-few');
    expect(eyeAgreement([...times(9, 'in', 'in'), ...times(30, 'out', 'cant-tell')]).kappa).toBe('too-few');
    expect(eyeAgreement([]).kappa).toBe('too-few');
    expect(eyeAgreement(times(10, 'in', 'in')).kappa).toBeNull();
  });

  it('has each repetition in one count', () => {
    const one = fc.record({
      eye: fc.constantFrom('in' as const, 'out' as const),
      measured: fc.constantFrom(...verdicts),
    });
    fc.assert(
      fc.property(fc.array(one), (judged) => {
        const { counts, untold } = eyeAgreement(judged);
        expect(Object.values(counts).reduce((sum, count) => sum + count, untold)).toBe(judged.length);
      }),
    );
  });
});

describe('eyeRepeat(judged)', () => {
  const twice = (count: number, first: 'in' | 'out', second: 'in' | 'out'): JudgedTwice[] =>
    Array.from({ length: count }, () => ({ first, second }));

  it('counts what was judged alike and what was not, and gives kappa', () => {
    // 9 + 6 alike of 20; chance (12 x 11 + 8 x 9) / 400 = .51; (.75 - .51) / .49 = .4898.
    const { counts, kappa } = eyeRepeat([
      ...twice(9, 'in', 'in'),
      ...twice(3, 'in', 'out'),
      ...twice(2, 'out', 'in'),
      ...twice(6, 'out', 'out'),
    ]);
    expect(counts).toEqual({ alikeIn: 9, alikeOut: 6, thenOut: 2, nowOut: 3 });
    expect(kappa).toMatchObject({ count: 20, agreement: 0.75 });
    expect((kappa as { kappa: number }).kappa).toBeCloseTo(0.4898, 4);
  });

  it('gives no kappa below 10 repetitions, nor where one class was used throughout', () => {
    expect(eyeRepeat(twice(9, 'in', 'out')).kappa).toBe('too-few');
    expect(eyeRepeat(twice(10, 'in', 'in')).kappa).toBeNull();
  });
});
