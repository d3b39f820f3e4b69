import { describe, expect, it } from 'vitest';
import { endMove, moveLimits, startLimits, undoLimits } from '#features/review/store/limitHistory';

const first = { kneeInwardDeg: 10, kneeOutwardDeg: 8 };

describe('moveLimits(history, next), endMove(history)', () => {
  it('count a whole move as one change', () => {
    const moving = moveLimits(moveLimits(startLimits(first), { ...first, kneeInwardDeg: 11 }), {
      ...first,
      kneeInwardDeg: 13,
    });
    const ended = endMove(moving);
    expect(ended.present).toEqual({ kneeInwardDeg: 13, kneeOutwardDeg: 8 });
    expect(ended.past).toEqual([first]);
  });

  it('count a move that ends where it began as none', () => {
    const back = moveLimits(moveLimits(startLimits(first), { ...first, kneeInwardDeg: 12 }), {
      ...first,
      kneeInwardDeg: 10,
    });
    expect(endMove(back)).toEqual(startLimits(first));
  });

  it('keep limits in their range', () => {
    expect(moveLimits(startLimits(first), { ...first, kneeInwardDeg: 99 }).present.kneeInwardDeg).toBe(30);
    expect(moveLimits(startLimits(first), { ...first, kneeOutwardDeg: -3 }).present.kneeOutwardDeg).toBe(1);
  });
});

describe('undoLimits(history)', () => {
  it('takes changes back one by one, down to the first limits', () => {
    const one = endMove(moveLimits(startLimits(first), { ...first, kneeInwardDeg: 12 }));
    const two = endMove(moveLimits(one, { ...one.present, kneeOutwardDeg: 5 }));
    expect(undoLimits(two).present).toEqual({ kneeInwardDeg: 12, kneeOutwardDeg: 8 });
    expect(undoLimits(undoLimits(two)).present).toEqual(first);
    expect(undoLimits(undoLimits(undoLimits(two)))).toEqual(startLimits(first));
  });

  it('takes back a move that is still under way', () => {
    expect(undoLimits(moveLimits(startLimits(first), { ...first, kneeInwardDeg: 20 }))).toEqual(
      startLimits(first),
    );
  });
});
