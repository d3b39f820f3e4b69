import { describe, expect, it } from 'vitest';
import { changeOfSets, courseOfTests, type MeasuredSet } from '#core/change/changeOfSets';
import { limbSymmetry } from '#core/change/limbSymmetry';
import { painChange } from '#core/change/painChange';
import { sideDifference } from '#core/change/sideDifference';
import type { SetConditions } from '#core/conditions/setConditions';
import {
  changeSentences,
  courseSentences,
  noImportantChange,
  painSentence,
  sideSentence,
  symmetrySentence,
} from '#words/changeSentences';
import { conditionsOf } from '../../support/setConditions';

const set = (day: number, value: number, given: Partial<SetConditions> = {}): MeasuredSet => ({
  day,
  value,
  conditions: conditionsOf(given),
});

describe('changeSentences(result)', () => {
  it('tells a change beyond error', () => {
    const result = changeOfSets(
      [12.2, 13.9, 13.5].map((deg, i) => set(i, deg)),
      [7.1, 8.3, 8.3].map((deg, i) => set(30 + i, deg)),
      3.01,
    );
    expect(changeSentences(result)).toEqual([
      'Mean inward knee angle: 13.2° (3 days) then, 7.9° (3 days) now. ' +
        '5.3° less inward, beyond error, which can make 4.8°.',
      noImportantChange,
    ]);
  });

  it('tells none within error, and what was not noted', () => {
    const bare = { footwear: null };
    expect(changeSentences(changeOfSets([set(0, 7.9, bare)], [set(9, 13.2, bare)], 3.01))).toEqual([
      'Mean inward knee angle: 7.9° (1 day) then, 13.2° (1 day) now. ' +
        'No change beyond error: 5.3° more inward, and error alone can make 8.3°.',
      'Not noted of either set: footwear.',
      noImportantChange,
    ]);
  });

  it('compares nothing that is unlike', () => {
    expect(changeSentences(changeOfSets([set(0, 9)], [set(9, 2, { support: 'hand' })], 3.01))).toEqual([
      'Not compared: support none then, a hand now.',
    ]);
  });
});

describe('courseSentences(course)', () => {
  const falling = [14, 13, 11, 12, 9, 8];

  it('tells the change over the weeks', () => {
    const days = (ofWeek: number[]) =>
      falling.flatMap((value, week) => ofWeek.map((day) => set(7 * week + day, value)));
    expect(courseSentences(courseOfTests(days([0]), 3.01))[0]).toBe(
      'In 5 weeks no change beyond error yet: 5.9° less inward, give or take 7.1°.',
    );
    expect(courseSentences(courseOfTests(days([0, 2, 4]), 3.01))[0]).toBe(
      'In 5 weeks: 5.9° less inward, give or take 4.1°. Beyond error.',
    );
  });

  it('says what is not in it', () => {
    const sets = [set(0, 9, { seatHeightCm: 50 }), set(7, 8), set(9, 8, { isTest: false })];
    expect(courseSentences(courseOfTests(sets, 3.01))).toEqual([
      'Weeks with tests: 1. A course takes 3.',
      'Not compared (day 0): seat 50 cm then, 46 cm now.',
      'Sets of training that are not in it: 1.',
      noImportantChange,
    ]);
  });
});

describe('painSentence(what, change)', () => {
  const said = (earlier: number[], later: number[]) =>
    painSentence('Worst pain of the day', painChange(earlier, later));

  it.each([
    [said([6, 5, 7], [3]), 'Worst pain of the day, median: 6 then, 3 now. 3 points less, beyond error.'],
    [
      said([3], [5]),
      'Worst pain of the day, median: 3 then, 5 now. 2 points more: as large as people call important, but within error.',
    ],
    [said([3], [2]), 'Worst pain of the day, median: 3 then, 2 now. 1 point less, which may be chance.'],
    [said([3, 4], [3, 4]), 'Worst pain of the day, median: 3.5 then, 3.5 now. The same.'],
  ])('%s', (sentence, expected) => {
    expect(sentence).toBe(expected);
  });
});

describe('sideSentence(difference)', () => {
  const day = (left: number, right: number) => ({
    left: { deg: left, yawSdDeg: 2, otherSdDeg: 2.249 },
    right: { deg: right, yawSdDeg: 2, otherSdDeg: 2.249 },
  });

  it('tells a difference and how far error reaches', () => {
    expect(sideSentence(sideDifference([day(12, 5)], 'own'))).toBe(
      'Inward knee angle left 12°, right 5°: a difference of 7°, give or take 8.3. No difference beyond error.',
    );
    expect(sideSentence(sideDifference([day(-4, 9)], 'same'))).toBe(
      'Inward knee angle left −4°, right 9°: a difference of 13°, give or take 10. ' +
        'Beyond error: right is farther inward.',
    );
  });
});

describe('symmetrySentence(symmetry, what)', () => {
  const said = (involved: number, uninvolved: number, sem: number | null, before = false) =>
    symmetrySentence(limbSymmetry({ value: involved, sem }, { value: uninvolved, sem }), {
      involved: 'right',
      before,
      linePct: 90,
    });

  it.each([
    [said(18, 24, 1.2), 'The right leg does 75 % of the other leg (63 to 88). Below 90 % beyond error.'],
    [said(22, 24, 1.2), 'The right leg does 92 % of the other leg (79 to 106). 90 % is within error.'],
    [
      said(40, 32, 1.2),
      'The right leg does 125 % of the other leg (114 to 137). At 90 % or more beyond error.',
    ],
    [
      said(150, 180, null, true),
      'The right leg does 83 % of the other leg before the injury. No error of it is known, so no interval.',
    ],
  ])('%s', (sentence, expected) => {
    expect(sentence).toBe(expected);
  });
});
