import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { propose } from '#core/programme/propose';
import { proposeSoFar } from '#core/programme/proposeSoFar';
import { anyCourse, courseOf } from '../../../support/stageCourses';

const open = { worstNextDay: null };
const told = (...sessions: Parameters<typeof courseOf>[0]) => proposeSoFar(courseOf(sessions)).proposal;

describe('proposeSoFar(course)', () => {
  it('looks past the newest session’s day after where that alone is missing, and still names it', () => {
    const course = courseOf([{}, {}, {}, open]);
    expect(propose(course).proposal).toBe('stay');
    const { proposal, reasons } = proposeSoFar(course);
    expect(proposal).toBe('step-up');
    expect(reasons.at(-1)).toEqual({ kind: 'next-day-unknown', day: 6 });
  });

  it.each([
    ['a caution in the newest session', { ...open, painDuring: 3.5, painBefore: 0.5 }, 'repeat'],
    ['pain above the limit in it', { ...open, painDuring: 4 }, 'repeat'],
    ['a knee that gave way in it', { ...open, event: 'gave-way' as const }, 'hold'],
    ['its quality', { ...open, expectedShare: 0.5, lowerTenthShare: 0.3 }, 'stay'],
    ['its effort', { ...open, effort: 9 }, 'stay'],
    ['a set that was not all done', { ...open, doneShare: 0.8 }, 'stay'],
  ])('lets %s decide', (_, newest, proposal) => {
    expect(told({}, {}, {}, newest)).toBe(proposal);
  });

  it('stays with three sessions of which the newest is open, or where an earlier day after is missing too', () => {
    expect(told({}, {}, open)).toBe('stay');
    expect(told({}, {}, open, open)).toBe('stay');
    expect(told({}, open, {}, {}, open)).toBe('stay');
  });

  it('proposes more repetitions only where the newest session had fewer', () => {
    const [fewer, raised] = [{ repetitions: 14 }, { repetitions: 16 }];
    expect(proposeSoFar(courseOf([fewer, fewer, fewer, { ...open, ...fewer }]))).toMatchObject({
      proposal: 'more',
      repetitions: 16,
    });
    expect(told(fewer, fewer, fewer, { ...open, ...raised })).toBe('stay');
  });

  it('says what propose(course) says wherever that is not to stay', () => {
    let bolder = 0;
    fc.assert(
      fc.property(anyCourse, ({ sessions, ...agreed }) => {
        const course = {
          ...agreed,
          sessions: [...sessions.slice(0, -1), ...sessions.slice(-1).map((one) => ({ ...one, ...open }))],
        };
        const [plain, soFar] = [propose(course), proposeSoFar(course)];
        if (plain.proposal !== 'stay') expect(soFar).toEqual(plain);
        else expect(['stay', 'more', 'step-up']).toContain(soFar.proposal);
        if (soFar.proposal !== plain.proposal) bolder++;
      }),
      { numRuns: 3000 },
    );
    expect(bolder).toBeGreaterThan(0);
  });
});
