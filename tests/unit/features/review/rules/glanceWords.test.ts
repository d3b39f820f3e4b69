import { describe, expect, it } from 'vitest';
import type { SetGlance } from '#features/review/rules/buildSetGlance';
import { countSentence, lostSentence, peaksSentence } from '#features/review/rules/glanceWords';

const glance: SetGlance = {
  done: 6,
  excluded: 0,
  inLine: {
    expected: 3.9,
    low: 3,
    high: 5,
    mode: 4,
    chancesInLine: [1, 1, 0.1, 1, 0.6, 0],
    countChances: [],
  },
  notClear: 1,
  notMeasured: 0,
  lost: [
    {
      measure: 'knee-angle',
      end: 'most',
      repetitions: [
        { number: 3, isProbable: true },
        { number: 6, isProbable: false },
      ],
    },
  ],
  worst: { number: 6, extreme: { value: 17.2, band: 3, sample: 7, timeMs: 21_500 } },
  medianDeg: 8.4,
  medianEnd: 'most',
  goodRun: 2,
  tempo: [],
  bend: null,
  trend: null,
  timeInLinePct: 92,
};

describe('countSentence(glance)', () => {
  it('says how many were in line, its range, and how many are not clear', () => {
    expect(countSentence(glance)).toBe('4 of 6 in line (3 to 5), 1 not clear.');
    expect(countSentence({ ...glance, notClear: 0, notMeasured: 2 })).toBe(
      '4 of 6 in line (3 to 5), 2 not measured.',
    );
    const sure = { ...glance.inLine!, low: 6, high: 6, mode: 6 };
    expect(countSentence({ ...glance, notClear: 0, inLine: sure })).toBe('6 of 6 in line.');
  });

  it('keeps the number within its range', () => {
    expect(countSentence({ ...glance, inLine: { ...glance.inLine!, mode: 6 } })).toContain(
      '5 of 6 in line (3',
    );
  });

  it('says so where nothing was measured, or nothing counts', () => {
    expect(countSentence({ ...glance, inLine: null })).toBe('None of 6 is measured.');
    expect(countSentence({ ...glance, done: 0, excluded: 2 })).toBe(
      'No repetition counts: all are excluded.',
    );
  });
});

describe('lostSentence(glance)', () => {
  it('names the repetitions and the way, the certain ones first', () => {
    expect(lostSentence(glance)).toBe('Out of line inward: 6, probably 3.');
    expect(lostSentence({ ...glance, lost: [] })).toBe('');
  });

  it('shortens runs, and names another measure with its way', () => {
    const repetitions = [1, 3, 4, 5, 8, 9].map((number) => ({ number, isProbable: false }));
    const [knee] = glance.lost;
    const drop = { measure: 'pelvic-drop', end: 'most', repetitions } as const;
    expect(lostSentence({ ...glance, lost: [drop, knee!] })).toBe(
      'Out of line in pelvic drop, free side down: 1, 3 to 5, 8, 9; inward: 6, probably 3.',
    );
  });
});

describe('peaksSentence(glance)', () => {
  it('gives the worst and the median peak, and says where peaks went both ways', () => {
    expect(peaksSentence(glance)).toBe('Worst 17° inward (repetition 6), median 8°.');
    expect(peaksSentence({ ...glance, medianEnd: null })).toContain('median 8° either way.');
    expect(peaksSentence({ ...glance, worst: null, medianDeg: null })).toBe('');
  });
});
