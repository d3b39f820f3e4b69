import { describe, expect, it } from 'vitest';
import { mergeHandedOver, mergePatients, withMark, withPlans } from '#documents/patient/mergePatients';
import { newPatient } from '#documents/patient/newPatient';
import type { AssessmentRecord, Decision, PatientDocument } from '#documents/patient/patientDocument';

const idOf = (digit: number) => `${digit}b0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d11`;
const decision = (digit: number, day: number): Decision => ({
  id: idOf(digit),
  at: `2026-04-0${day}T08:00:00.000Z`,
  by: 'AB',
  planId: idOf(9),
  item: 0,
  task: 'lateral-step-down',
  proposal: 'step-up',
  repetitions: null,
  reasons: ['Day 4: the knee drifted inward during a set.'],
  answer: 'refused',
  why: 'Travels next week.',
});
const test: AssessmentRecord = {
  id: idOf(5),
  at: '2026-04-03T08:00:00.000Z',
  by: 'AB',
  test: 'one-leg-rise',
  asDone: 'seat 46 cm',
  tries: { left: [24], right: [18] },
  worstPain: 2,
  remark: '',
  withdrawn: null,
};
const withdrawn = { at: '2026-04-04T08:00:00.000Z', by: 'CD' };
const of = (change: Partial<PatientDocument>): PatientDocument => ({
  ...newPatient('Blue Heron 7', idOf(1), '2026-03-01T00:00:00.000Z'),
  ...change,
});

const id = '6a1f0a52-1d2e-4c57-9a5b-0f6f1f0e9d66';
const visitId = '7b0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d11';
const patient = newPatient('Blue Heron 7', id, '2026-02-01T04:05:06.000Z');
const viewed = { visitId, state: 'viewed' as const, at: '2026-02-02T04:05:06.000Z' };

describe('withMark(marks, mark)', () => {
  it('settles what was viewed, and never the other way round', () => {
    const settled = { ...viewed, state: 'settled' as const };
    expect(withMark([viewed], settled)).toEqual([settled]);
    const marks = [settled];
    expect(withMark(marks, viewed)).toBe(marks);
  });
});

describe('withPlans(patient, given)', () => {
  const given = (digit: number, day: number) => ({
    id: `${digit}b0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d11`,
    givenAt: `2026-02-0${day}T00:00:00.000Z`,
  });
  it('puts them in order of time, each once', () => {
    const two = withPlans(withPlans(patient, [given(1, 5)]), [given(2, 3), given(1, 5)]);
    expect(two.plans).toEqual([given(2, 3), given(1, 5)]);
    expect(withPlans(two, [given(2, 3)])).toBe(two);
  });
});

describe('mergeHandedOver(here, there, by)', () => {
  const by = { here: 'AB', there: 'CD' };
  const [early, late] = ['2026-03-01T00:00:00.000Z', '2026-03-02T00:00:00.000Z'];
  const noted = (change: Partial<PatientDocument>) => ({ ...patient, ...change });

  it('keeps what the other noted beside what counts, with who noted it, once', () => {
    const here = noted({ changedAt: late, goals: 'Stairs' });
    const there = noted({ changedAt: early, goals: 'Running', painfulSide: 'left' });
    const also = { at: early, by: 'CD', notes: { goals: 'Running', painfulSide: 'left' } };
    const merged = mergeHandedOver(here, there, by);
    expect(merged).toEqual({ ...here, alsoNoted: [also] });
    expect(mergeHandedOver(merged, there, by)).toEqual(merged);
    expect(mergeHandedOver(there, here, by)).toMatchObject({
      goals: 'Stairs',
      alsoNoted: [{ ...also, by: 'AB' }],
    });
  });

  it('has nothing to keep of what is the same, or was left open', () => {
    const here = noted({ changedAt: late, goals: 'Stairs' });
    expect(mergeHandedOver(here, noted({ changedAt: early, goals: 'Stairs' }), by)).toEqual(here);
    expect(mergeHandedOver(here, noted({ changedAt: early }), by)).toEqual(here);
  });
});

describe('mergePatients(here, there)', () => {
  it('takes the notes as they were changed last, whichever side that is', () => {
    const later = {
      ...patient,
      changedAt: '2026-03-01T00:00:00.000Z',
      goals: 'Stairs.',
      sites: ['front' as const],
    };
    expect(mergePatients(patient, later)).toEqual(later);
    expect(mergePatients(later, { ...patient, id: visitId })).toEqual(later);
  });

  it('keeps the decisions of both in order of time, each once', () => {
    const here = of({ decisions: [decision(2, 1), decision(3, 5)] });
    const there = of({ decisions: [decision(2, 1), decision(4, 3)] });
    const merged = [mergePatients(here, there), mergePatients(there, here)];
    for (const { decisions } of merged) expect(decisions.map(({ id }) => id)).toEqual([2, 4, 3].map(idOf));
  });

  it('takes a test as withdrawn where either says so', () => {
    const [with_, without] = [of({ assessments: [{ ...test, withdrawn }] }), of({ assessments: [test] })];
    expect(mergePatients(with_, without).assessments).toEqual([{ ...test, withdrawn }]);
    expect(mergePatients(without, with_).assessments).toEqual([{ ...test, withdrawn }]);
  });

  it('takes the thresholds that were set last, and the repeats of both', () => {
    const repeat = (digit: number) => ({ ...withdrawn, first: idOf(digit), second: idOf(digit + 1) });
    const here = of({ thresholds: { sessions: 4 }, repeats: [repeat(1)] });
    const there = of({ changedAt: '2026-05-01T00:00:00.000Z', repeats: [repeat(1), repeat(3)] });
    expect(mergePatients(here, there)).toMatchObject({ thresholds: {}, repeats: [repeat(1), repeat(3)] });
  });

  it('takes a pause as taken out where either says so, with the end that was changed last', () => {
    const pause = {
      ...{ id: idOf(6), at: '2026-04-03T08:00:00.000Z', by: 'AB', withdrawn: null },
      ...{ from: '2026-04-03', to: null, changed: null },
    };
    const ended = { ...pause, to: '2026-04-09', changed: { at: '2026-04-09T08:00:00.000Z', by: 'AB' } };
    const later = { ...pause, to: '2026-04-12', changed: { at: '2026-04-12T08:00:00.000Z', by: 'CD' } };
    const cases = [
      [pause, ended, ended],
      [ended, later, later],
      [ended, { ...pause, withdrawn }, { ...ended, withdrawn }],
    ] as const;
    for (const [one, other, expected] of cases) {
      const [here, there] = [of({ pauses: [one] }), of({ pauses: [other] })];
      expect(mergePatients(here, there).pauses).toEqual([expected]);
      expect(mergePatients(there, here).pauses).toEqual([expected]);
    }
  });

  it('keeps what both judged by eye, each once', () => {
    const judged = (day: number) => ({
      at: `2026-04-0${day}T08:00:00.000Z`,
      by: 'AB',
      recordingId: idOf(1),
      answers: [{ repetition: 0, verdict: 'in' as const }],
    });
    const here = of({ ownEye: [judged(1)] });
    const there = of({ ownEye: [judged(1), judged(2)] });
    expect(mergePatients(here, there).ownEye).toEqual([judged(1), judged(2)]);
  });
});
