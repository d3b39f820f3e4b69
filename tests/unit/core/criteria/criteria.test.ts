import { describe, expect, it } from 'vitest';
import { aroundValue, criteriaCards, criterionState } from '#core/criteria/criteria';
import { unfit } from '../../../support/unfitWords';

/** Nothing that a line may say. */
const promises = /\b(ready|safe|cleared|normal|improved|pass)/i;

describe('criterionState(value, line, detectable)', () => {
  // Beyond error by 2.8 between two values: one value is off by 2.8 / √2 = 1.98 at most.
  it.each([
    [null, { least: 90 }, null, 'not-measured'],
    [90, { least: 90 }, null, 'met'],
    [89.9, { least: 90 }, null, 'not-met'],
    [91.9, { least: 90 }, 2.8, 'within-error'],
    [92, { least: 90 }, 2.8, 'met'],
    [88.1, { least: 90 }, 2.8, 'within-error'],
    [88, { least: 90 }, 2.8, 'not-met'],
    [1, { most: 1 }, null, 'met'],
    [1.1, { most: 1 }, null, 'not-met'],
    [0, { most: 1 }, 1, 'met'],
    [1, { most: 1 }, 1, 'within-error'],
    [2, { most: 1 }, 1, 'not-met'],
  ] as const)('%s against %o with %s is %s', (value, line, detectable, state) => {
    const interval = value === null || detectable === null ? null : aroundValue(value, detectable);
    expect(criterionState(value, line, interval)).toBe(state);
  });
});

describe.each(Object.entries(criteriaCards))('the card of %s', (_id, criteria) => {
  it('names each line once, and promises nothing', () => {
    expect(new Set(criteria.map(({ id }) => id)).size).toBe(criteria.length);
    for (const { name, lineWords, source } of criteria) {
      expect(`${name} ${lineWords} ${source}`).not.toMatch(promises);
      expect(`${name} ${lineWords}`).not.toMatch(unfit);
    }
  });
});
