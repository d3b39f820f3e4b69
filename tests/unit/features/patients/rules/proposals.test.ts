import { describe, expect, it } from 'vitest';
import { countInLine } from '#core/chance/countInLine';
import { defaultLimits } from '#core/protocol/limits';
import { notedConditions } from '#documents/plan/notedConditions';
import type { RepetitionItem } from '#documents/plan/planDocument';
import { changesPlan, draftOf, itemProposals } from '#features/patients/rules/proposals';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { listedRecording, listedSession, readingOf } from '../../../../support/listedSession';
import { smallHold, smallItem, smallPlan } from '../../../../support/smallPlan';

const item = smallItem({
  task: 'single-leg-sit-to-stand',
  stage: 'seat-46',
  seatHeightCm: 46,
  sets: 1,
  repetitions: 20,
});
const plan = smallPlan({ items: [smallHold(), item], painLimit: 3, usualPain: 1 });
const peaks = [2, 3, 4, 4, 5, 3, 6, 4, 5, 4];

/** A session in which all went well, on a day of April; its repetitions are far within the limits. */
function good(day: number, change: Partial<ListedSession> = {}, of: RepetitionItem = item): ListedSession {
  const read = readingOf(peaks.map(() => 'in'));
  const inLine = countInLine(
    peaks.map((most) => ({ most })),
    { least: -10, most: 10 },
    { sharedSd: 1, ownSds: peaks.map(() => 1) },
  );
  const points = peaks.map((valueDeg, index) => ({
    number: index + 1,
    valueDeg,
    bandDeg: 4,
    isAtEdge: false,
    verdict: 'in' as const,
  }));
  return listedSession({
    id: `${day}`.padStart(8, '0') + '-93ff-4a8e-8f8d-5a6c1b2e7d10',
    startedAt: `2026-04-${String(day).padStart(2, '0')}T08:00:00.000Z`,
    painBefore: 1,
    painAfter: 1,
    effort: 6,
    sets: [
      listedRecording({
        line: {
          task: of.task,
          painDuring: 2,
          prescribedRepetitions: of.repetitions,
          conditions: notedConditions(of, plan),
        },
        reading: {
          ...read,
          result: { ...read.result, inLine },
          course: { points, limits: defaultLimits, bendsFilmed: true, measuringVersion: 7 },
        },
      }),
    ],
    ...change,
  });
}

/** Sessions on these days, each of which but the last was asked about afterwards, and one that asked about that. */
function answered(sessions: ListedSession[], worst = 1): ListedSession[] {
  return sessions.map((session, index) => {
    const before = sessions[index - 1];
    if (before === undefined) return session;
    return { ...session, afterLast: { visitId: before.id, worst, swelling: 'same' as const } };
  });
}
const three = answered([good(1), good(3), good(5), good(7, { sets: [] })]);
const proposed = (sessions: ListedSession[], thresholds = {}) =>
  itemProposals(plan, sessions, thresholds)[0]!;

describe('itemProposals(plan, sessions, thresholds)', () => {
  it('steps up after three good sessions, and makes the next plan of it', () => {
    const found = proposed(three);
    expect(found).toMatchObject({
      index: 1,
      sessions: 3,
      proposal: { proposal: 'step-up' },
      next: { kind: 'other-stage', stage: { id: 'seat-42' } },
    });
    expect(changesPlan(found)).toBe(true);
    const { items, patient } = draftOf(plan, found);
    expect(patient).toBe(plan.patient);
    expect(items[0]).toEqual(plan.items[0]);
    expect(items[1]).toMatchObject({
      stage: 'seat-42',
      seatHeightCm: 42,
      repetitions: 10,
      sides: item.sides,
    });
  });

  it('goes through the practice’s own stages where it has some', () => {
    const stage = (id: string, seatHeightCm: number) => ({
      ...{ id, words: `From ${seatHeightCm} cm.`, seatHeightCm, start: 7 },
      upTo: { min: 14, max: 18 },
    });
    const own = { [item.task]: [stage('seat-46', 46), stage('seat-44', 44)] };
    const found = itemProposals(plan, three, {}, own)[0]!;
    expect(found.next).toMatchObject({ kind: 'other-stage', stage: { id: 'seat-44' }, number: 2, of: 2 });
    expect(draftOf(plan, found).items[1]).toMatchObject({
      stage: 'seat-44',
      seatHeightCm: 44,
      repetitions: 7,
      upTo: { min: 14, max: 18 },
    });
    // At a stage that the practice took out, a step names no next one.
    expect(itemProposals(plan, three, {}, { [item.task]: [stage('seat-44', 44)] })[0]!.next).toBeNull();
  });

  it.each<[string, ListedSession[], string, string]>([
    ['two sessions', three.slice(0, 2), 'stay', 'few-sessions'],
    ['a next day that was not answered', [good(1), good(3), good(5)], 'stay', 'next-day-unknown'],
    [
      'pain that was not answered',
      answered([good(1), good(3, { painBefore: null }), good(5), good(7, { sets: [] })]),
      'stay',
      'unanswered',
    ],
    [
      'two next days 3 above the pain before',
      answered([good(1), good(3), good(5), good(7, { sets: [] })], 4),
      'step-down',
      'pain-risen',
    ],
    [
      'a knee that gave way',
      answered([good(1), good(3), good(5, { endedBecause: { reason: 'gave-way', fell: false } })]),
      'hold',
      'event',
    ],
    [
      'a sign before the next session began',
      [...three.slice(0, 3), good(7, { sets: [], check: { asked: 'new', signs: ['calf'], takenBack: [] } })],
      'hold',
      'event',
    ],
  ])('after %s', (_, sessions, proposal, reason) => {
    const found = proposed(sessions).proposal;
    expect(found.proposal).toBe(proposal);
    expect(found.reasons.map(({ kind }) => kind)).toContain(reason);
  });

  it('counts only sessions at the present stage', () => {
    const before = good(1, {}, { ...item, stage: 'seat-50', seatHeightCm: 50 });
    expect(proposed([before, ...three.slice(1)]).sessions).toBe(2);
    expect(proposed([]).proposal.reasons).toMatchObject([{ kind: 'few-sessions', sessions: 0 }]);
  });

  it('follows what was set for the patient, and proposes more repetitions before a step', () => {
    expect(proposed(three.slice(0, 2), { sessions: 1, leastDays: 0 }).proposal.proposal).toBe('stay');
    const fewer = { ...item, repetitions: 14 };
    const asked = { ...plan, items: [fewer] };
    const sessions = answered([1, 3, 5].map((day) => good(day, {}, fewer)).concat(good(7, { sets: [] })));
    const [found] = itemProposals(asked, sessions, {});
    expect(found).toMatchObject({ proposal: { proposal: 'more', repetitions: 16 } });
    expect(draftOf(asked, found!).items[0]).toEqual({ ...fewer, repetitions: 16 });
  });
});
