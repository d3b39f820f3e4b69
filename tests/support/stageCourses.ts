import fc from 'fast-check';
import {
  sessionEvents,
  swellingRules,
  swellings,
  unansweredIds,
  type StageCourse,
  type StageSession,
  type UnansweredId,
} from '#core/programme/stageCourse';

/** A session in which all went well. */
export const goodSession: StageSession = {
  day: 0,
  painBefore: 1,
  painDuring: 2,
  worstNextDay: 1,
  swelling: 'same',
  event: null,
  doneShare: 1,
  measuredShare: 1,
  expectedShare: 0.9,
  lowerTenthShare: 0.7,
  driftInward: false,
  effort: 6,
  repetitions: 20,
};

/** Sessions on days 0, 2, 4 and so on, each good but for what is given. */
export function courseOf(
  sessions: readonly Partial<StageSession>[],
  agreed: Partial<Omit<StageCourse, 'sessions'>> = {},
): StageCourse {
  return {
    limit: 3,
    usualPain: 1,
    swellingRule: 'contact',
    upTo: { min: 20, max: 25 },
    ...agreed,
    sessions: sessions.map((session, i) => ({ ...goodSession, day: 2 * i, ...session })),
  };
}

/** Mostly `usual`, now and then anything. */
const mostly = <Value>(usual: Value, anything: fc.Arbitrary<Value>) =>
  fc.oneof({ weight: 19, arbitrary: fc.constant(usual) }, { weight: 1, arbitrary: anything });
const anyPain = fc.integer({ min: 0, max: 10 });
const anyShare = fc.double({ min: 0, max: 1, noNaN: true });
const likelyPain = fc.oneof(
  { weight: 19, arbitrary: fc.integer({ min: 0, max: 3 }) },
  { weight: 1, arbitrary: anyPain },
);

const anySession = fc.record({
  gapDays: fc.integer({ min: 0, max: 5 }),
  painBefore: likelyPain,
  painDuring: likelyPain,
  worstNextDay: mostly<number | null>(1, fc.option(anyPain)),
  swelling: mostly('same', fc.constantFrom(...swellings)),
  event: mostly(null, fc.option(fc.constantFrom(...sessionEvents))),
  doneShare: mostly(1, anyShare),
  measuredShare: fc.constantFrom(1, 1, 1, 1, 0.8, 0.5),
  expectedShare: mostly(0.9, anyShare),
  lowerTenthShare: mostly(0.7, anyShare),
  driftInward: mostly(false, fc.boolean()),
  effort: fc.constantFrom(3, 5, 6, 6, 7, 8, 9),
  repetitions: fc.integer({ min: 8, max: 30 }),
  unanswered: mostly<readonly UnansweredId[]>([], fc.subarray([...unansweredIds])),
});

/** Courses of all kinds, many of which go well. */
export const anyCourse: fc.Arbitrary<StageCourse> = fc
  .record({
    limit: fc.integer({ min: 3, max: 6 }),
    usualPain: fc.integer({ min: 0, max: 6 }),
    swellingRule: fc.constantFrom(...swellingRules),
    upTo: fc.constantFrom({ min: 20, max: 25 }, { min: 15, max: 15 }),
    sessions: fc.oneof(
      { weight: 1, arbitrary: fc.array(anySession, { maxLength: 2 }) },
      { weight: 4, arbitrary: fc.array(anySession, { minLength: 3, maxLength: 6 }) },
    ),
  })
  .map(({ sessions, ...agreed }) => {
    let day = 0;
    return {
      ...agreed,
      sessions: sessions.map(({ gapDays, ...session }) => ({ ...session, day: (day += gapDays) })),
    };
  });
