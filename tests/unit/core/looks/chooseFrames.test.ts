import { describe, expect, it } from 'vitest';
import { chooseFrames, loadedStretches } from '#core/looks/chooseFrames';

const filmed = (seconds: number, rateHz = 30) =>
  Float64Array.from({ length: Math.round(seconds * rateHz) }, (_, frame) => (frame * 1000) / rateHz);

describe('frames for a closer look', () => {
  it('come at the rate of the stretch that they are in, and at the resting rate otherwise', () => {
    const stretches = [
      { fromMs: 1000, toMs: 4000, rateHz: 3 },
      { fromMs: 2000, toMs: 3000, rateHz: 7.5 },
    ];
    const chosen = chooseFrames(filmed(6), stretches, 1);
    const between = (fromMs: number, toMs: number) =>
      chosen.filter((frame) => (frame * 1000) / 30 >= fromMs && (frame * 1000) / 30 < toMs).length;
    expect([between(0, 1000), between(1000, 2000), between(3034, 4000), between(4034, 6000)]).toEqual([
      1, 3, 3, 2,
    ]);
    expect(between(2000, 3000)).toBe(8);
  });

  it('are all frames where the recording has fewer than asked for', () => {
    expect(chooseFrames(filmed(2, 5), [{ fromMs: 0, toMs: 2000, rateHz: 7.5 }])).toEqual([
      0, 1, 2, 3, 4, 5, 6, 7, 8, 9,
    ]);
  });

  it('are few in a long rest', () => {
    const chosen = chooseFrames(filmed(120), []);
    expect(chosen.length).toBeLessThanOrEqual(21);
    expect(chosen.length).toBeGreaterThan(17);
  });

  it('are none where there are no frames', () => {
    expect(chooseFrames(new Float64Array(), [])).toEqual([]);
  });
});

describe('loadedStretches({ repetitions, timesMs, curves })', () => {
  const timesMs = Float64Array.from({ length: 12 }, (_, i) => 100 * i);
  const depth = (values: number[]) => ({ depth: { values: Float64Array.from(values) } });

  it('looks often where the leg is bent by more than a fifth of its deepest, and less elsewhere under load', () => {
    const curves = depth([0, 0, 0.02, 0.1, 0.2, 0.1, 0.02, 0.01, 0.3, 0.1, 0, 0]);
    expect(loadedStretches({ repetitions: [{ loadedFrom: 1, loadedTo: 9 }], timesMs, curves })).toEqual([
      { fromMs: -50, toMs: 1050, rateHz: 3 },
      { fromMs: 150, toMs: 650, rateHz: 7.5 },
      { fromMs: 650, toMs: 1050, rateHz: 7.5 },
    ]);
  });

  it('takes a leg whose depth was never seen as straight', () => {
    const curves = depth(new Array<number>(12).fill(0));
    expect(loadedStretches({ repetitions: [{ loadedFrom: 2, loadedTo: 4 }], timesMs, curves })).toEqual([
      { fromMs: 50, toMs: 550, rateHz: 3 },
    ]);
  });
});
