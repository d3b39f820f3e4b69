import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findExcursions } from '#core/segmentation/findExcursions';

const levels = { rest: 0.25, far: 0.75, least: 0.45 };

describe('findExcursions(signal, levels)', () => {
  it('finds one departure with its far stretch', () => {
    //                                   0    1    2    3    4    5    6    7
    expect(findExcursions([0.1, 0.2, 0.5, 0.8, 0.9, 0.76, 0.4, 0.05], levels)).toEqual([
      { leave: 1, farStart: 3, farEnd: 5, back: 7, peak: 0.9, cut: 'none' },
    ]);
  });

  it('counts trembling at the resting level once', () => {
    const signal = [0.1, 0.26, 0.24, 0.27, 0.23, 0.6, 0.95, 0.3, 0.24, 0.28, 0.1];
    expect(findExcursions(signal, levels)).toHaveLength(1);
  });

  it('counts trembling at the far level once, from first to last', () => {
    const [only, ...others] = findExcursions([0, 0.5, 0.76, 0.7, 0.8, 0.74, 0.77, 0.5, 0.1], levels);
    expect(only).toMatchObject({ leave: 0, farStart: 2, farEnd: 6, back: 8 });
    expect(others).toEqual([]);
  });

  it('keeps together a double bounce that never returns to rest', () => {
    expect(findExcursions([0, 0.9, 0.3, 0.95, 0.1], levels)).toHaveLength(1);
    expect(findExcursions([0, 0.9, 0.25, 0.95, 0.1], levels)).toHaveLength(2);
  });

  it('skips a departure below the least level and keeps one that reaches it', () => {
    expect(findExcursions([0, 0.4499, 0], levels)).toEqual([]);
    expect(findExcursions([0, 0.45, 0], levels)).toMatchObject([
      { peak: 0.45, farStart: null, farEnd: null },
    ]);
  });

  it('counts a value exactly at the far level as far, and exactly at rest as resting', () => {
    expect(findExcursions([0.25, 0.75, 0.25], levels)).toEqual([
      { leave: 0, farStart: 1, farEnd: 1, back: 2, peak: 0.75, cut: 'none' },
    ]);
  });

  it('marks a departure that was under way when the signal began', () => {
    expect(findExcursions([0.6, 0.8, 0.1, 0.2], levels)).toMatchObject([
      { leave: 0, farStart: 1, back: 2, cut: 'at-start' },
    ]);
  });

  it('marks a departure that was under way when the signal ended', () => {
    expect(findExcursions([0.1, 0.2, 0.5, 0.7], levels)).toMatchObject([
      { leave: 1, farStart: null, back: 3, cut: 'at-end' },
    ]);
  });

  it('marks a signal that never rests as cut at its start', () => {
    expect(findExcursions([0.5, 0.9, 0.6], levels)).toMatchObject([{ leave: 0, back: 2, cut: 'at-start' }]);
  });

  it('finds nothing in an empty signal or at rest', () => {
    expect(findExcursions([], levels)).toEqual([]);
    expect(findExcursions([0.1, 0.02, 0.25], levels)).toEqual([]);
  });

  const signals = fc.array(fc.double({ min: -0.3, max: 1.3, noNaN: true }), { maxLength: 120 });

  it('returns departures in order, without overlap, inside the signal, with their true peaks', () => {
    fc.assert(
      fc.property(signals, (signal) => {
        const found = findExcursions(signal, levels);
        found.forEach((excursion, i) => {
          const { leave, back, farStart, farEnd, peak } = excursion;
          expect(leave).toBeGreaterThanOrEqual(found[i - 1]?.back ?? 0);
          expect(back).toBeGreaterThanOrEqual(leave);
          expect(back).toBeLessThan(signal.length);
          expect(peak).toBe(Math.max(...signal.slice(leave, back + 1)));
          expect(peak).toBeGreaterThanOrEqual(levels.least);
          expect(farStart === null).toBe(peak < levels.far);
          if (farStart === null || farEnd === null) return;
          expect(farStart).toBeGreaterThanOrEqual(leave);
          expect(farEnd).toBeGreaterThanOrEqual(farStart);
          expect(farEnd).toBeLessThanOrEqual(back);
        });
        found.forEach(({ cut }, i) => {
          if (cut === 'at-start') expect(i).toBe(0);
          if (cut === 'at-end') expect(i).toBe(found.length - 1);
        });
      }),
    );
  });

  it('finds the same departures, reversed, in a reversed signal', () => {
    fc.assert(
      fc.property(signals, (signal) => {
        const last = signal.length - 1;
        const forward = findExcursions(signal, levels);
        const backward = findExcursions(signal.toReversed(), levels).reverse();
        expect(backward.map(({ peak }) => peak)).toEqual(forward.map(({ peak }) => peak));
        expect(backward.map(({ farStart }) => farStart)).toEqual(
          forward.map(({ farEnd }) => (farEnd === null ? null : last - farEnd)),
        );
      }),
    );
  });

  it('finds as many when every sample is repeated', () => {
    fc.assert(
      fc.property(signals, fc.integer({ min: 2, max: 5 }), (signal, times) => {
        const slow = signal.flatMap((value) => new Array<number>(times).fill(value));
        const peaks = (found: ReturnType<typeof findExcursions>) => found.map(({ peak, cut }) => [peak, cut]);
        expect(peaks(findExcursions(slow, levels))).toEqual(peaks(findExcursions(signal, levels)));
      }),
    );
  });
});
