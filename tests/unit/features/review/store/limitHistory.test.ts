import { describe, expect, it } from 'vitest';
import { withLimit, type Limits } from '#core/protocol/limits';
import { endMove, moveLimits, startLimits, undoLimits } from '#features/review/store/limitHistory';

const kneeTo = (most: number, least = -8): Limits => ({ 'knee-angle': { least, most } });
const first = kneeTo(10);

describe('moveLimits(history, next), endMove(history)', () => {
  it('count a whole move as one change', () => {
    const moving = moveLimits(
      moveLimits(startLimits(first), withLimit(first, 'knee-angle', 'most', 11)),
      kneeTo(13),
    );
    const ended = endMove(moving);
    expect(ended.present).toEqual({ 'knee-angle': { least: -8, most: 13 } });
    expect(ended.past).toEqual([first]);
  });

  it('count a move that ends where it began as none', () => {
    const back = moveLimits(
      moveLimits(startLimits(first), withLimit(first, 'knee-angle', 'most', 12)),
      kneeTo(10),
    );
    expect(endMove(back)).toEqual(startLimits(first));
  });

  it('keep limits in their range', () => {
    expect(moveLimits(startLimits(first), kneeTo(99)).present['knee-angle'].most).toBe(30);
    expect(moveLimits(startLimits(first), kneeTo(10, 3)).present['knee-angle'].least).toBe(-1);
  });
});

describe('undoLimits(history)', () => {
  it('takes changes back one by one, down to the first limits', () => {
    const one = endMove(moveLimits(startLimits(first), withLimit(first, 'knee-angle', 'most', 12)));
    const two = endMove(moveLimits(one, withLimit(one.present, 'knee-angle', 'least', -5)));
    expect(undoLimits(two).present).toEqual({ 'knee-angle': { least: -8, most: 12 } });
    expect(undoLimits(undoLimits(two)).present).toEqual(first);
    expect(undoLimits(undoLimits(undoLimits(two)))).toEqual(startLimits(first));
  });

  it('takes back a move that is still under way', () => {
    expect(undoLimits(moveLimits(startLimits(first), withLimit(first, 'knee-angle', 'most', 20)))).toEqual(
      startLimits(first),
    );
  });
});
