import { describe, expect, it } from 'vitest';
import { doneWords } from '#features/home/screens/setWords';
import type { HomeSet } from '#features/home/store/homeState';

const set = (
  change: Partial<HomeSet['result']>,
  found: number | null = null,
  keeping: HomeSet['keeping'] = 'kept',
) => ({
  result: {
    stepIndex: 0,
    itemIndex: 0,
    task: 'single-leg-squat',
    side: 'left',
    number: 2,
    prescribed: 3,
    counted: null,
    heldMs: null,
    cutShort: null,
    isRecorded: true,
    ...change,
  } as const,
  found,
  keeping,
});

describe('doneWords(set, isFinal)', () => {
  it('is what was counted, which what is found later does not change', () => {
    for (const isFinal of [false, true]) {
      expect(doneWords(set({ counted: 3 }, 2), isFinal)).toBe('3 of 3 done');
      expect(doneWords(set({ counted: 5, prescribed: 0 }, 2), isFinal)).toBe('5 done');
    }
  });

  it('waits for what is found where nobody counted', () => {
    expect(doneWords(set({}, 2), false)).toBe('Recorded');
    expect(doneWords(set({}, 2), true)).toBe('2 of 3 done');
  });

  it('says how long a hold was, and why there is nothing', () => {
    expect(doneWords(set({ heldMs: 41_600 }, null, 'none'), true)).toBe('Held for 42 seconds in total');
    expect(doneWords(set({}, null, 'none'), true)).toBe('Not recorded');
    expect(doneWords(set({ cutShort: 'Pain.' }, null, 'none'), true)).toMatch(/^You stopped before/);
  });
});
