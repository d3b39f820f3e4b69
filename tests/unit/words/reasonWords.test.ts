import { describe, expect, it } from 'vitest';
import { missingReasons } from '#core/measurement/curve';
import { reasonWords } from '#words/reasonWords';
import { unfit } from '../../support/unfitWords';

describe('reasonWords', () => {
  it.each(missingReasons.filter((reason) => reason !== 'none'))(
    'explains %s and says what to change',
    (reason) => {
      const { short, advice } = reasonWords[reason];
      expect(short).toMatch(/^[a-z][^.]*$/);
      expect(advice).toMatch(/^[A-Z].*\.$/);
      expect(`${short} ${advice}`).not.toMatch(unfit);
    },
  );

  it('gives each reason its own words', () => {
    const all = Object.values(reasonWords);
    expect(new Set(all.map(({ short }) => short)).size).toBe(all.length);
  });
});
