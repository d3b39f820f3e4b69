import { describe, expect, it } from 'vitest';
import { createUniformStream } from '#core/signal/createUniformStream';

describe('createUniformStream(rateHz)(timeMs, value)', () => {
  it('interpolates linearly between two observations, as soon as both are known', () => {
    const push = createUniformStream(20);
    expect(push(1000, 3)).toEqual([3]);
    // 50 ms apart from 1000: none up to 1040; 1050 and 1100 lie 10/70 and 60/70 of the way from 3 to 10.
    expect(push(1040, 3)).toEqual([]);
    const samples = push(1110, 10);
    expect(samples).toHaveLength(2);
    expect(samples[0]).toBeCloseTo(4, 12);
    expect(samples[1]).toBeCloseTo(9, 12);
  });

  it('gives the same samples however often observations come', () => {
    const push = createUniformStream(30);
    let count = push(0, 1).length;
    for (let i = 1; i <= 100; i++) count += push(i * 71 + (i % 3) * 11, i).length;
    expect(count).toBe(Math.floor((7111 * 30) / 1000) + 1);
  });

  it('holds the last value where nothing is seen and across a long gap', () => {
    const push = createUniformStream(10);
    push(0, 5);
    expect(push(100, null)).toEqual([5]);
    expect(push(200, 7)).toEqual([7]);
    expect(push(500, 9)).toEqual([7, 7, 7]);
  });

  it('gives nothing before the first value', () => {
    const push = createUniformStream(10);
    expect(push(0, null)).toEqual([]);
    expect(push(300, null)).toEqual([]);
    expect(push(350, 2)).toEqual([2]);
    expect(push(450, 2)).toEqual([2]);
  });

  it('throws where time does not increase', () => {
    const push = createUniformStream(10);
    push(100, 1);
    expect(() => push(100, 2)).toThrow('Times must increase: 100 ms is followed by 100 ms.');
  });
});
