import { describe, expect, it } from 'vitest';
import { thresholdFacts, thresholdIds, usualThresholds } from '#core/programme/proposalThresholds';
import { propose } from '#core/programme/propose';
import { courseOf } from '../../../support/stageCourses';

describe.each(thresholdIds)('the threshold %s', (id) => {
  const { usual, min, max, isWhole, meaning, source } = thresholdFacts[id];

  it('is usually within what can be set', () => {
    expect(usualThresholds[id]).toBe(usual);
    expect(usual).toBeGreaterThanOrEqual(min);
    expect(usual).toBeLessThanOrEqual(max);
    if (isWhole) expect([usual, min, max].every(Number.isInteger)).toBe(true);
  });

  it('says what it means and where it comes from', () => {
    expect(meaning).toMatch(/^[A-Z].*\.$/);
    expect(source).toMatch(/our choice, no source|\d{4}/);
  });

  it('changes a proposal when it is set', () => {
    const last = (session: object) => courseOf([{}, {}, session]);
    const courses = [
      last({ repetitions: 14 }),
      last({ painDuring: 3 }),
      courseOf(
        [{}, {}, {}].map(() => ({ painBefore: 0, painDuring: 4, worstNextDay: 4 })),
        {
          limit: 4,
          usualPain: 1,
        },
      ),
      last({ worstNextDay: 3 }),
      courseOf([{ expectedShare: 0.5 }, {}, { doneShare: 0.95, measuredShare: 0.8, effort: 7 }]),
    ];
    const outcome = (value: number) =>
      courses.map((course) => {
        const { proposal, repetitions } = propose(course, { ...usualThresholds, [id]: value });
        return `${proposal} ${repetitions}`;
      });
    expect(new Set([min, usual, max].map((value) => outcome(value).join())).size).toBeGreaterThan(1);
  });
});
