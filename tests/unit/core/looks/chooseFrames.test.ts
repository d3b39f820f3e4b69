import { describe, expect, it } from 'vitest';
import { chooseFrames, loadedStretches } from '#core/looks/chooseFrames';

const filmed = (seconds: number, rateHz = 30) =>
  Float64Array.from({ length: Math.round(seconds * rateHz) }, (_, frame) => (frame * 1000) / rateHz);
const rates = { loaded: 7.5, resting: 3 };

describe('frames for a closer look', () => {
  it('come at the loaded rate while the leg bears load, and at the resting rate otherwise', () => {
    const chosen = chooseFrames(filmed(6), [{ fromMs: 2000, toMs: 4000 }], rates);
    const between = (fromMs: number, toMs: number) =>
      chosen.filter((frame) => (frame * 1000) / 30 >= fromMs && (frame * 1000) / 30 < toMs).length;
    expect(between(2000, 4000)).toBe(15);
    expect(between(0, 2000)).toBe(6);
    expect(between(4000, 6000)).toBe(6);
  });

  it('are all frames where the recording has fewer than asked for', () => {
    expect(chooseFrames(filmed(2, 5), [{ fromMs: 0, toMs: 2000 }], rates)).toEqual([
      0, 1, 2, 3, 4, 5, 6, 7, 8, 9,
    ]);
  });

  it('are few in a long rest', () => {
    const chosen = chooseFrames(filmed(120), [], rates);
    expect(chosen.length).toBeLessThanOrEqual(41);
    expect(chosen.length).toBeGreaterThan(35);
  });

  it('are none where there are no frames', () => {
    expect(chooseFrames(new Float64Array(), [], rates)).toEqual([]);
  });

  it('reach a little beyond the loaded samples', () => {
    const timesMs = Float64Array.from([0, 100, 200, 300, 400]);
    expect(loadedStretches([{ loadedFrom: 1, loadedTo: 3 }], timesMs)).toEqual([{ fromMs: -50, toMs: 450 }]);
  });
});
