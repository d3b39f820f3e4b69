import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { proposalKinds, type Proposal } from '#core/programme/proposal';
import { usualThresholds } from '#core/programme/proposalThresholds';
import { propose } from '#core/programme/propose';
import { sessionEvents, swellings, type StageCourse, type StageSession } from '#core/programme/stageCourse';
import { anyCourse, courseOf } from '../../../support/stageCourses';

const kindsOf = ({ reasons }: Proposal) => reasons.map(({ kind }) => kind);
/** The proposal with its reasons' kinds, for one course. */
const told = (course: StageCourse) => {
  const proposal = propose(course);
  return [proposal.proposal, ...kindsOf(proposal)];
};
const evidence = ['pain-within', 'in-line', 'all-done', 'repetitions'];
const three = (each: Partial<StageSession>) => [each, each, each];

/**
 * Unless said: pain before 1, during 2, next day 1, limit 3, usual pain 1, expected share .9, lower tenth .7, effort 6,
 * 20 repetitions of 20 to 25, days 0, 2 and 4. A next-day rise is then 1 - 1 = 0, and a rise during it 2 - 1 = 1.
 */
describe('propose(course) decides as worked out beforehand', () => {
  it.each<[string, StageCourse, string, string[]]>([
    // Nothing found; 4 - 0 = 4 days are enough; .9 >= .8 and .7 >= .6 in 3 of 3; effort 6 <= 8; 20 of 20.
    ['all good', courseOf([{}, {}, {}]), 'step-up', evidence],
    // As above, but 14 < 20: 14 + 2 = 16, not above 25.
    ['14 repetitions', courseOf(three({ repetitions: 14 })), 'more', evidence],
    // 2 < 3.
    ['two sessions', courseOf([{}, {}]), 'stay', ['few-sessions']],
    // 2 - 0 = 2 < 4 days.
    ['days 0, 1, 2', courseOf([{ day: 0 }, { day: 1 }, { day: 2 }]), 'stay', ['few-days']],
    // 3 - 1 = 2: a caution, below the 3 of a poor session.
    ['next day 3 in the second', courseOf([{}, { worstNextDay: 3 }, {}]), 'stay', ['pain-risen']],
    // 4 - 1 = 3: poor; the second was good.
    ['next day 4 in the last', courseOf([{}, {}, { worstNextDay: 4 }]), 'repeat', ['pain-risen']],
    // 4 > 3 and 5 > 3: two poor ones. 5 and 4 are also above 1 + 2 = 3.
    [
      'during 4 in the second, 5 in the third',
      courseOf([{}, { painDuring: 4 }, { painDuring: 5 }]),
      'step-down',
      ['above-limit', 'above-usual', 'above-limit', 'above-usual'],
    ],
    // Poor by the rule; the second was good.
    [
      'more swollen in the last, rest and repeat',
      courseOf([{}, {}, { swelling: 'more' }], { swellingRule: 'rest-and-repeat' }),
      'repeat',
      ['swollen'],
    ],
    // Stopped by the rule.
    [
      'more swollen in the last, contact',
      courseOf([{}, {}, { swelling: 'more' }], { swellingRule: 'contact' }),
      'hold',
      ['swollen'],
    ],
    ['gave way in the last', courseOf([{}, {}, { event: 'gave-way' }]), 'hold', ['event']],
    // .9 and .7 are good; .7 < .8 and .75 < .8 are not, and neither are .5 and .55 < .6: 1 of 3, the last not.
    [
      'in line .9, .7, .75',
      courseOf([
        { expectedShare: 0.9, lowerTenthShare: 0.7 },
        { expectedShare: 0.7, lowerTenthShare: 0.5 },
        { expectedShare: 0.75, lowerTenthShare: 0.55 },
      ]),
      'stay',
      ['not-in-line'],
    ],
    // .7 < .8 is not; .85 and .65, .9 and .7 are: 2 of 3, the last one of them.
    [
      'in line .7, .85, .9',
      courseOf([
        { expectedShare: 0.7, lowerTenthShare: 0.5 },
        { expectedShare: 0.85, lowerTenthShare: 0.65 },
        { expectedShare: 0.9, lowerTenthShare: 0.7 },
      ]),
      'step-up',
      evidence,
    ],
    // .5 and .4 < .667: judged in 1 of 3.
    [
      'measured .5, .4, 1',
      courseOf([{ measuredShare: 0.5 }, { measuredShare: 0.4 }, { measuredShare: 1 }]),
      'stay',
      ['not-measured'],
    ],
    // 9 > 8.
    ['effort 9 in the last', courseOf([{}, {}, { effort: 9 }]), 'stay', ['hard']],
    [
      'next day missing in the second',
      courseOf([{}, { worstNextDay: null }, {}]),
      'stay',
      ['next-day-unknown'],
    ],
    // .8 < .9.
    ['80 % done in the second', courseOf([{}, { doneShare: 0.8 }, {}]), 'stay', ['not-all-done']],
    // 5 is not above 5, nor above 4 + 2; the next day 4 - 4 = 0; during 5 - 4 = 1.
    [
      'resting pain 4, its usual',
      courseOf(three({ painBefore: 4, painDuring: 5, worstNextDay: 4 }), { usualPain: 4, limit: 5 }),
      'step-up',
      evidence,
    ],
    // 8 >= 8 stops, whatever else it is: above the limit, and up 8 - 1 = 7.
    ['pain 8 in the last', courseOf([{}, {}, { painDuring: 8 }]), 'hold', ['strong-pain']],
    ['drift inward in the second', courseOf([{}, { driftInward: true }, {}]), 'stay', ['drift-inward']],
  ])('%s', (_, course, proposal, reasons) => {
    expect(told(course)).toEqual([proposal, ...reasons]);
  });

  it('two more repetitions than in the last session, but no more than the stage goes up to', () => {
    const more = (repetitions: number, upTo: StageCourse['upTo']) =>
      propose(courseOf([{}, {}, { repetitions }], { upTo })).repetitions;
    expect(more(14, { min: 20, max: 25 })).toBe(16);
    expect(more(19, { min: 20, max: 25 })).toBe(21);
    expect(more(14, { min: 15, max: 15 })).toBe(15);
  });

  it('a step up where the stage has gone beyond what it asks for', () => {
    expect(propose(courseOf(three({ repetitions: 30 })))).not.toHaveProperty('repetitions');
    expect(propose(courseOf(three({ repetitions: 30 }))).proposal).toBe('step-up');
  });
});

describe('propose(course) draws each line where it says', () => {
  const last = (session: Partial<StageSession>) => courseOf([{}, {}, session]);
  const noUsual = (session: Partial<StageSession>) =>
    courseOf([{}, {}, session], { limit: 10, usualPain: 4 });

  it.each<[string, within: StageCourse, beyond: StageCourse, proposal: string]>([
    ['limit', last({ painDuring: 3 }), last({ painDuring: 3.1 }), 'repeat'],
    ['limit before', last({ painBefore: 3 }), last({ painBefore: 4 }), 'repeat'],
    [
      'usual pain',
      noUsual({ painBefore: 4, painDuring: 6, worstNextDay: 4 }),
      noUsual({ painBefore: 5, painDuring: 7, worstNextDay: 4 }),
      'repeat',
    ],
    ['next-day caution', last({ worstNextDay: 2 }), last({ worstNextDay: 3 }), 'stay'],
    [
      'rise during',
      noUsual({ painBefore: 1, painDuring: 3 }),
      noUsual({ painBefore: 1, painDuring: 4 }),
      'stay',
    ],
    ['done', last({ doneShare: 0.9 }), last({ doneShare: 0.89 }), 'stay'],
    ['measured', last({ measuredShare: 4 / 6 }), last({ measuredShare: 0.66 }), 'stay'],
    ['expected in line', last({ expectedShare: 0.8 }), last({ expectedShare: 0.79 }), 'stay'],
    ['lower tenth', last({ lowerTenthShare: 0.6 }), last({ lowerTenthShare: 0.59 }), 'stay'],
    ['effort', last({ effort: 8 }), last({ effort: 8.5 }), 'stay'],
    [
      'good sessions',
      courseOf([{ expectedShare: 0.5 }, {}, {}]),
      courseOf([{ expectedShare: 0.5 }, { measuredShare: 0 }, {}]),
      'stay',
    ],
    ['days', courseOf([{}, { day: 1 }, { day: 4 }]), courseOf([{ day: 1 }, { day: 2 }, { day: 4 }]), 'stay'],
  ])('%s', (_, within, beyond, proposal) => {
    expect(propose(within).proposal).toBe('step-up');
    expect(propose(beyond).proposal).toBe(proposal);
  });

  it('from caution to poor at a next-day rise of 3, and from poor to a stop at pain 8', () => {
    expect(propose(last({ worstNextDay: 3.9 })).proposal).toBe('stay');
    expect(propose(last({ painBefore: 1.1, worstNextDay: 4.1 })).proposal).toBe('repeat');
    expect(propose(last({ worstNextDay: 7.9 })).proposal).toBe('repeat');
    expect(propose(last({ worstNextDay: 8 })).proposal).toBe('hold');
    expect(propose(last({ painBefore: 8 })).proposal).toBe('hold');
  });

  it('at other places where they are set', () => {
    const course = last({ painDuring: 3, effort: 9 });
    expect(propose(course, { ...usualThresholds, mostEffort: 9 }).proposal).toBe('step-up');
    expect(propose(course, { ...usualThresholds, strongPain: 3 }).proposal).toBe('hold');
    const two = courseOf([{}, { day: 1, repetitions: 10 }]);
    expect(
      propose(two, { ...usualThresholds, sessions: 2, leastDays: 1, addedRepetitions: 5 }),
    ).toMatchObject({ proposal: 'more', repetitions: 15 });
  });
});

describe('propose(course) weighs sessions by their order', () => {
  it('steps down after a poor session that followed one to stop for', () => {
    for (const stop of [{ event: 'fell' }, { swelling: 'much-more' }, { painDuring: 9 }] as const)
      expect(propose(courseOf([{}, stop, { painDuring: 4 }])).proposal).toBe('step-down');
  });

  it('repeats after a poor session that followed one with a caution', () => {
    expect(propose(courseOf([{}, { worstNextDay: 3 }, { painDuring: 4 }])).proposal).toBe('repeat');
  });

  it('needs no three sessions to hold, to repeat or to step down', () => {
    expect(propose(courseOf([{ event: 'fell' }])).proposal).toBe('hold');
    expect(propose(courseOf([{ painDuring: 4 }])).proposal).toBe('repeat');
    expect(propose(courseOf([{ painDuring: 4 }, { painDuring: 4 }])).proposal).toBe('step-down');
  });

  it('stays while an event is one of the last three, and lets it pass after that', () => {
    const after = (good: number) => courseOf([{ event: 'locked' }, ...Array<object>(good).fill({})]);
    expect(told(after(2))).toEqual(['stay', 'event']);
    expect(propose(after(3)).proposal).toBe('step-up');
  });

  it('stays where the last set was not measured, even with good quality in two', () => {
    expect(told(courseOf([{}, {}, { measuredShare: 0 }]))).toEqual(['stay', 'not-in-line']);
  });

  it('stays before the first session', () => {
    expect(told(courseOf([]))).toEqual(['stay', 'few-sessions']);
  });

  it('gives every reason to stay, in the order of the rules', () => {
    const course = courseOf([
      { day: 0, driftInward: true },
      { day: 1, worstNextDay: null, expectedShare: 0.5 },
      { day: 3, effort: 10, expectedShare: 0.5 },
    ]);
    expect(told(course)).toEqual([
      'stay',
      'few-days',
      'next-day-unknown',
      'drift-inward',
      'not-in-line',
      'hard',
    ]);
  });
});

const boldness = (course: StageCourse) => -proposalKinds.indexOf(propose(course).proposal);
const withSession = (course: StageCourse, i: number, session: Partial<StageSession>): StageCourse => ({
  ...course,
  sessions: course.sessions.map((each, k) => (k === i ? { ...each, ...session } : each)),
});
/** A course with one of its sessions, by its number. */
const anyOfCourse = anyCourse
  .filter(({ sessions }) => sessions.length > 0)
  .chain((course) => fc.tuple(fc.constant(course), fc.integer({ min: 0, max: course.sessions.length - 1 })));
const pain = fc.integer({ min: 0, max: 10 });
/** Enough that each rule decides in many of the courses. */
const many = { numRuns: 1000 };

describe('propose(course), whatever the course', () => {
  it('comes to every proposal in the courses tried here', () => {
    const proposals = fc.sample(anyCourse, 1000).map((course) => propose(course).proposal);
    for (const kind of proposalKinds)
      expect(proposals.filter((proposal) => proposal === kind).length).toBeGreaterThan(5);
  });

  it('is never bolder for more pain during a session or on the next day', () => {
    fc.assert(
      fc.property(anyOfCourse, pain, ([course, i], more) => {
        const { painDuring, worstNextDay } = course.sessions[i]!;
        const worse: Partial<StageSession>[] = [
          { painDuring: Math.max(painDuring, more) },
          { worstNextDay: worstNextDay === null ? null : Math.max(worstNextDay, more) },
        ];
        const boldest = Math.max(...worse.map((session) => boldness(withSession(course, i, session))));
        expect(boldest).toBeLessThanOrEqual(boldness(course));
      }),
      many,
    );
  });

  it('is never bolder for as much more pain before, during and after a session', () => {
    fc.assert(
      fc.property(anyOfCourse, pain, ([course, i], more) => {
        const { painBefore, painDuring, worstNextDay } = course.sessions[i]!;
        const session = {
          painBefore: painBefore + more,
          painDuring: painDuring + more,
          worstNextDay: worstNextDay === null ? null : worstNextDay + more,
        };
        expect(boldness(withSession(course, i, session))).toBeLessThanOrEqual(boldness(course));
      }),
      many,
    );
  });

  it('is never bolder for an event, more swelling, less done, less in line, a drift, more effort or a lower limit', () => {
    fc.assert(
      fc.property(anyOfCourse, fc.double({ min: 0, max: 1, noNaN: true }), ([course, i], share) => {
        const { swelling, doneShare, measuredShare, expectedShare, lowerTenthShare, effort } =
          course.sessions[i]!;
        const worse = [
          ...swellings.slice(swellings.indexOf(swelling)).map((more) => ({ swelling: more })),
          { doneShare: doneShare * share },
          { measuredShare: measuredShare * share },
          { expectedShare: expectedShare * share },
          { lowerTenthShare: lowerTenthShare * share },
          { driftInward: true },
          { event: 'fell' as const },
          { effort: effort + (10 - effort) * share },
        ];
        const courses = worse.map((session) => withSession(course, i, session));
        const boldest = Math.max(...[...courses, { ...course, limit: course.limit * share }].map(boldness));
        expect(boldest).toBeLessThanOrEqual(boldness(course));
      }),
      many,
    );
  });

  it('holds after an event, pain of 8 or much more swelling in the last session', () => {
    const stops = fc.constantFrom<Partial<StageSession>>(
      ...sessionEvents.map((event) => ({ event })),
      { painBefore: 8 },
      { painDuring: 9 },
      { worstNextDay: 10 },
      { swelling: 'much-more' },
    );
    fc.assert(
      fc.property(anyCourse, stops, (course, stop) => {
        const last = courseOf([stop]).sessions[0]!;
        const stopped = { ...course, sessions: [...course.sessions, { ...last, day: 100 }] };
        expect(propose(stopped).proposal).toBe('hold');
      }),
      many,
    );
  });

  it('has a reason, and repetitions with more of them alone', () => {
    fc.assert(
      fc.property(anyCourse, (course) => {
        const { proposal, repetitions, reasons } = propose(course);
        expect(reasons.length).toBeGreaterThan(0);
        expect(repetitions !== undefined).toBe(proposal === 'more');
        if (repetitions === undefined) return;
        const last = course.sessions.at(-1)!;
        expect(repetitions).toBeGreaterThan(last.repetitions);
        expect(repetitions).toBeLessThanOrEqual(course.upTo.max);
      }),
      many,
    );
  });

  it('adds nothing unless the last three sessions were answered, done and hardly painful', () => {
    fc.assert(
      fc.property(anyCourse, (course) => {
        if (!['more', 'step-up'].includes(propose(course).proposal)) return;
        const recent = course.sessions.slice(-3);
        expect(recent).toHaveLength(3);
        for (const { event, painDuring, worstNextDay, painBefore, doneShare } of recent) {
          expect(event).toBeNull();
          expect(painDuring).toBeLessThanOrEqual(course.limit);
          expect(worstNextDay).not.toBeNull();
          expect(worstNextDay! - painBefore).toBeLessThan(2);
          expect(doneShare).toBeGreaterThanOrEqual(0.9);
        }
      }),
      many,
    );
  });

  it('is the same whatever day the course began on', () => {
    fc.assert(
      fc.property(anyCourse, fc.integer({ min: -1000, max: 1000 }), (course, days) => {
        const later = course.sessions.map((session) => ({ ...session, day: session.day + days }));
        const [moved, before] = [propose({ ...course, sessions: later }), propose(course)];
        expect([moved.proposal, ...kindsOf(moved)]).toEqual([before.proposal, ...kindsOf(before)]);
      }),
      many,
    );
  });
});

describe('propose(course) refuses', () => {
  it.each<[StageCourse, string]>([
    [courseOf([{ painDuring: NaN }]), 'Statistics need finite numbers, got NaN.'],
    [courseOf([], { limit: Infinity }), 'Statistics need finite numbers, got Infinity.'],
    [courseOf([{ day: 4 }, { day: 2 }]), 'Sessions go from the oldest to the newest, got day 2 after 4.'],
  ])('%j', (course, message) => {
    expect(() => propose(course)).toThrow(new RangeError(message));
  });
});
