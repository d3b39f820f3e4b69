import { describe, expect, it } from 'vitest';
import { findInSession, type Severity } from '#core/programme/findInSession';
import type { SessionReason } from '#core/programme/proposal';
import { usualThresholds } from '#core/programme/proposalThresholds';
import type { ItemRules, StageSession } from '#core/programme/stageCourse';
import { courseOf } from '../../../support/stageCourses';

/** A session of pain 1 before, 2 during and 1 the next day, with limit 3 and usual pain 1. */
const found = (session: Partial<StageSession>, agreed: Partial<ItemRules> = {}) => {
  const course = courseOf([{ day: 7, ...session }], agreed);
  return findInSession(course.sessions[0]!, course, usualThresholds);
};
const wide = { limit: 9, usualPain: 7 };

describe('findInSession(session, agreed, thresholds)', () => {
  it('finds nothing in a session that went well, answered or not', () => {
    expect(found({})).toEqual([]);
    expect(found({ worstNextDay: null, swelling: 'less' })).toEqual([]);
  });

  it.each<[Partial<StageSession>, Partial<ItemRules>, Severity, SessionReason]>([
    [{ event: 'locked' }, {}, 'stop', { kind: 'event', day: 7, event: 'locked' }],
    [{ event: 'red-flag' }, {}, 'stop', { kind: 'event', day: 7, event: 'red-flag' }],
    [
      { swelling: 'much-more' },
      { swellingRule: 'rest-and-repeat' },
      'stop',
      { kind: 'swollen', day: 7, swelling: 'much-more', rule: 'rest-and-repeat' },
    ],
    [
      { swelling: 'more' },
      { swellingRule: 'contact' },
      'stop',
      { kind: 'swollen', day: 7, swelling: 'more', rule: 'contact' },
    ],
    [
      { swelling: 'more' },
      { swellingRule: 'rest-and-repeat' },
      'poor',
      { kind: 'swollen', day: 7, swelling: 'more', rule: 'rest-and-repeat' },
    ],
    // 8 from 7, so neither a rise of 2 nor above 7 + 2 = 9 or the limit of 9.
    [
      { painBefore: 7, painDuring: 8, worstNextDay: 7 },
      wide,
      'stop',
      { kind: 'strong-pain', day: 7, time: 'during', pain: 8, from: 8 },
    ],
    [
      { painBefore: 7, painDuring: 7, worstNextDay: 8 },
      wide,
      'stop',
      { kind: 'strong-pain', day: 7, time: 'next-day', pain: 8, from: 8 },
    ],
    [
      { painDuring: 3 },
      { limit: 2 },
      'poor',
      { kind: 'above-limit', day: 7, time: 'during', pain: 3, limit: 2 },
    ],
    [
      { painBefore: 3, painDuring: 2 },
      { limit: 2 },
      'poor',
      { kind: 'above-limit', day: 7, time: 'before', pain: 3, limit: 2 },
    ],
    // 3 - 0.5 = 2.5 > 2.
    [
      { painDuring: 3 },
      { usualPain: 0.5 },
      'poor',
      { kind: 'above-usual', day: 7, time: 'during', pain: 3, usual: 0.5, allowed: 2 },
    ],
    // 4 - 1 = 3, 3 - 1 = 2.
    [{ worstNextDay: 4 }, {}, 'poor', { kind: 'pain-risen', day: 7, time: 'next-day', pain: 4, before: 1 }],
    [
      { worstNextDay: 3 },
      {},
      'caution',
      { kind: 'pain-risen', day: 7, time: 'next-day', pain: 3, before: 1 },
    ],
    // 3 - 0 = 3, at the limit; the next day 1 - 0 = 1.
    [
      { painBefore: 0, painDuring: 3 },
      {},
      'caution',
      { kind: 'pain-risen', day: 7, time: 'during', pain: 3, before: 0 },
    ],
    [{ driftInward: true }, {}, 'caution', { kind: 'drift-inward', day: 7 }],
    [{ doneShare: 0.85 }, {}, 'caution', { kind: 'not-all-done', day: 7, doneShare: 0.85, least: 0.9 }],
  ])('finds in %j with %j: %s', (session, agreed, severity, reason) => {
    expect(found(session, agreed)).toEqual([{ severity, reason }]);
  });

  it('takes no rise of one point for a reason', () => {
    expect(found({ worstNextDay: 2, painDuring: 3 })).toEqual([]);
  });

  it('gives the first and highest pain once', () => {
    const strong = found({ painBefore: 9, painDuring: 9, worstNextDay: 9 }, { limit: 10, usualPain: 9 });
    expect(strong.map(({ reason }) => reason)).toEqual([
      { kind: 'strong-pain', day: 7, time: 'before', pain: 9, from: 8 },
    ]);
  });
});
