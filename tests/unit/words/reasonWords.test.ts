import { describe, expect, it } from 'vitest';
import { missingReasons } from '#core/measurement/curve';
import { reasonWords } from '#words/reasonWords';
import { unfit } from '../../support/unfitWords';

const reasons = missingReasons.filter((reason) => reason !== 'none');

describe('reasonWords', () => {
  it.each(reasons)('explains %s and says what to change', (reason) => {
    const { short, advice } = reasonWords(reason);
    expect(short).toMatch(/^[a-z][^.]*$/);
    expect(advice).toMatch(/^[A-Z].*\.$/);
    expect(`${short} ${advice}`).not.toMatch(unfit);
  });

  it('gives each reason its own words', () => {
    const all = reasons.map(reasonWords);
    expect(new Set(all.map(({ short }) => short)).size).toBe(all.length);
  });
});
