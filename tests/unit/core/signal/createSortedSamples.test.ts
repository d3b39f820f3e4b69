import { describe, expect, it } from 'vitest';
import { seededRandom } from '#core/seededRandom';
import { createSortedSamples } from '#core/signal/createSortedSamples';
import { quantileOf } from '#core/signal/quantileOf';

describe('createSortedSamples().quantile(share)', () => {
  it('equals the quantile of all sorted values, after each of thousands', () => {
    const random = seededRandom(4);
    const samples = createSortedSamples();
    const values: number[] = [];
    for (let i = 0; i < 3000; i++) {
      // Rounded, so that some values come more than once.
      const value = Math.round(200 * random.gaussian()) / 100;
      values.push(value);
      samples.add(value);
      if (i % 97 !== 0 && i > 5) continue;
      for (const share of [0, 0.05, 0.5, 0.95, 1])
        expect(samples.quantile(share)).toBe(quantileOf(values, share));
    }
  });

  it('is undefined without values', () => {
    expect(createSortedSamples().quantile(0.5)).toBeUndefined();
  });
});
