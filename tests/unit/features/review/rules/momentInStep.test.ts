import { describe, expect, it } from 'vitest';
import { momentInStepMs, stepPctAt } from '#features/review/rules/momentInStep';
import { phaseAt } from '#features/review/rules/phaseAt';

const timesMs = Float64Array.from({ length: 11 }, (_, sample) => sample * 100);
const events = {
  startMs: 100,
  seatOffMs: null,
  topMs: null,
  topEndMs: null,
  bottomMs: 400,
  seatContactMs: null,
  endMs: 900,
};
const dip = { loadedFrom: 1, loadedTo: 9, events };

describe('momentInStepMs(repetition, timesMs, pct)', () => {
  it('puts the turning point at 50 %, whenever it was', () => {
    // A quarter: half-way from 100 to 400 ms; three quarters: half-way from 400 to 900 ms.
    expect([0, 25, 50, 75, 100].map((pct) => momentInStepMs(dip, timesMs, pct))).toEqual([
      100, 250, 400, 650, 900,
    ]);
    expect(momentInStepMs(dip, timesMs, 140)).toBe(900);
  });

  it('uses the middle of standing, or of the time where nothing was seen', () => {
    const rise = { ...dip, events: { ...events, bottomMs: null, topMs: 300, topEndMs: 500 } };
    expect(momentInStepMs(rise, timesMs, 50)).toBe(400);
    const unseen = { ...dip, events: { ...events, bottomMs: null } };
    expect(momentInStepMs(unseen, timesMs, 50)).toBe(500);
  });
});

describe('stepPctAt(repetition, timesMs, timeMs)', () => {
  it('is its inverse within the repetition, and stays within 0 to 100 %', () => {
    for (const pct of [0, 20, 50, 80, 100])
      expect(stepPctAt(dip, timesMs, momentInStepMs(dip, timesMs, pct))).toBeCloseTo(pct, 10);
    expect(stepPctAt(dip, timesMs, 0)).toBe(0);
    expect(stepPctAt(dip, timesMs, 2000)).toBe(100);
  });
});

describe('phaseAt(events, shape, timeMs)', () => {
  it('distinguishes going, turning and coming back', () => {
    // A tenth of 800 ms either side of 400 ms.
    expect([200, 330, 470, 490].map((timeMs) => phaseAt(events, 'dip', timeMs))).toEqual([
      'going',
      'turning',
      'turning',
      'coming-back',
    ]);
    expect(phaseAt({ ...events, bottomMs: null }, 'dip', 300)).toBeNull();
    expect(phaseAt({ ...events, topMs: 300, topEndMs: 500 }, 'rise', 600)).toBe('coming-back');
  });
});
