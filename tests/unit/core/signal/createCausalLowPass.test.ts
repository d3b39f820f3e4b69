import { describe, expect, it } from 'vitest';
import { butterworthLowPass } from '#core/signal/butterworthLowPass';
import { createCausalLowPass } from '#core/signal/createCausalLowPass';
import { filterZeroPhase } from '#core/signal/filterZeroPhase';

const filter = butterworthLowPass(6, 30, 1);

describe('createCausalLowPass(filter)', () => {
  it('answers a step as worked by hand', () => {
    // At rest at 2, then 12: a0 = .20657, so 2 + 10 x .20657 = 4.0657; next 2 + 10 (a0 + a1 + b1 x .20657)
    // = 2 + 10 (.20657 + .41314 + .36953 x .20657) = 2 + 10 x .69604 = 8.9604. Handbook coefficients, five decimals.
    const smooth = createCausalLowPass(filter);
    expect(smooth(2)).toBeCloseTo(2, 12);
    expect(smooth(12)).toBeCloseTo(4.0657, 3);
    expect(smooth(12)).toBeCloseTo(8.9604, 3);
  });

  it('stays at a constant from the first sample on', () => {
    const smooth = createCausalLowPass(filter);
    for (let i = 0; i < 20; i++) expect(smooth(-7.5)).toBeCloseTo(-7.5, 12);
  });

  it('lags behind the filter that looks ahead, and is independent of other instances', () => {
    const wave = Float64Array.from({ length: 120 }, (_, i) => Math.sin((2 * Math.PI * i) / 40));
    const [smooth, other] = [createCausalLowPass(filter), createCausalLowPass(filter)];
    const causal = wave.map((value) => {
      other(100 + value);
      return smooth(value);
    });
    const peakAfter = (signal: Float64Array, from: number) =>
      from + signal.subarray(from, from + 40).indexOf(Math.max(...signal.subarray(from, from + 40)));
    expect(peakAfter(filterZeroPhase(wave, filter), 40)).toBe(50);
    expect(peakAfter(causal, 40)).toBeGreaterThan(50);
    expect(peakAfter(causal, 40)).toBeLessThan(53);
  });
});
