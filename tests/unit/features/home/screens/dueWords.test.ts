import { describe, expect, it } from 'vitest';
import { dueWords } from '#features/home/screens/dueWords';
import { smallHold, smallItem } from '../../../../support/smallPlan';

describe('dueWords(item)', () => {
  it('says sets and repetitions', () => {
    expect(dueWords(smallItem())).toBe('2 sets of 5, right leg');
    expect(dueWords(smallItem({ sets: 1, repetitions: 8 }))).toBe('8 times, right leg');
    expect(dueWords(smallItem({ sets: 1, repetitions: 1 }))).toBe('once, right leg');
    expect(dueWords(smallItem({ sides: ['left', 'right'] }))).toBe('2 sets of 5, each leg');
  });

  it('says holds and how long', () => {
    expect(dueWords(smallHold())).toBe('2 holds of 12 seconds, left leg');
    expect(dueWords(smallHold({ sets: 3, holds: 1, sides: ['right', 'left'] }))).toBe(
      '3 sets of 1 hold of 12 seconds, each leg',
    );
    expect(dueWords(smallHold({ holds: 1, holdSeconds: 1 }))).toBe('1 hold of 1 second, left leg');
  });
});
