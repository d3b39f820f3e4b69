import { describe, expect, it } from 'vitest';
import { newPatient } from '#documents/patient/newPatient';
import { coverRows, listPatients, searchPatients } from '#features/patients/rules/listPatients';
import { buildOverview } from '#features/patients/rules/overview';
import { listedRecording, listedSession, readingOf } from '../../../../support/listedSession';
import { smallPlan } from '../../../../support/smallPlan';

const idOf = (digit: number) => `${digit}b0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d11`;
const patient = (digit: number, pseudonym: string) =>
  newPatient(pseudonym, idOf(digit), '2026-03-01T00:00:00.000Z');
const viewed = (visitId: string) => ({ visitId, state: 'viewed' as const, at: '2026-04-06T00:00:00.000Z' });
const calm = (id: string, day: number) =>
  listedSession({ id, startedAt: `2026-04-0${day}T06:00:00.000Z`, sets: [listedRecording()] });
const pause = { id: idOf(8), at: '2026-04-12T06:00:00.000Z', by: 'AB', changed: null, withdrawn: null };
const nowMs = Date.parse('2026-04-20T06:00:00.000Z');
const out = listedRecording({ reading: readingOf(['in', ['out', 'inward']]) });

describe('listPatients(patients, overviews, nowMs)', () => {
  it('puts open concerns first, then new sessions by how pressing, then viewed ones, then by day', () => {
    const patients = [
      patient(1, 'calm and viewed'),
      { ...patient(2, 'out of line, viewed'), marks: [viewed(idOf(2))] },
      patient(3, 'new and calm'),
      patient(4, 'new, out of line'),
      { ...patient(5, 'open'), marks: [{ ...viewed(idOf(5)), state: 'settled' as const }] },
      patient(6, 'new, in pain'),
      patient(7, 'without sessions'),
    ];
    patients[0]!.marks = [viewed(idOf(1))];
    const session = {
      1: calm(idOf(1), 9),
      2: { ...calm(idOf(2), 1), sets: [out] },
      3: calm(idOf(3), 2),
      4: { ...calm(idOf(4), 1), sets: [out] },
      5: { ...calm(idOf(5), 1), isOpen: true },
      6: { ...calm(idOf(6), 1), painAfter: 6 },
    };
    const overviews = new Map(
      Object.entries(session).map(([digit, one]) => [idOf(Number(digit)), buildOverview([one], null, 'now')]),
    );
    const rows = listPatients(patients, overviews, nowMs);
    expect(rows.map(({ pseudonym }) => pseudonym)).toEqual([
      'open',
      'new, in pain',
      'new, out of line',
      'new and calm',
      'out of line, viewed',
      'calm and viewed',
      'without sessions',
    ]);
    expect(rows[1]).toMatchObject({
      counts: { new: 1, viewed: 0, settled: 0 },
      needs: ['pain 6, limit 4', 'pain rose 2 to 6'],
    });
    expect(rows.at(-1)).toMatchObject({ lastAt: null, sessions: 0, needs: [] });
  });

  it('says that signs were written down at a visit, among what was looked at and is not settled', () => {
    const redFlags = [
      {
        ...{ id: idOf(8), at: '2026-04-03T10:00:00.000Z', by: 'AB', withdrawn: null, on: '2026-04-03' },
        ...{ asked: ['calf' as const, 'locked' as const], applied: ['calf' as const] },
      },
    ];
    const patients = [
      patient(1, 'new and calm'),
      { ...patient(2, 'with a sign'), redFlags },
      { ...patient(3, 'calm and viewed'), marks: [viewed(idOf(3))] },
    ];
    const overviews = new Map(
      [1, 3].map((digit) => [idOf(digit), buildOverview([calm(idOf(digit), digit)], null, 'now')]),
    );
    const rows = listPatients(patients, overviews, nowMs);
    expect(rows.map(({ pseudonym }) => pseudonym)).toEqual([
      'new and calm',
      'with a sign',
      'calm and viewed',
    ]);
    expect(rows[1]!.needs).toEqual(['a sign at the visit of Friday 3 April 2026']);
  });

  it('says of whom nothing was heard for a week or more, before what is not of the body', () => {
    const plan = smallPlan({ createdAt: '2026-04-01T06:00:00.000Z', perWeek: 3 });
    const last = { ...calm(idOf(1), 9), plan: { id: plan.id, madeAt: plan.createdAt } };
    const overviews = new Map([
      [idOf(1), buildOverview([last], plan, 'now')],
      [idOf(2), buildOverview([{ ...calm(idOf(2), 9), sets: [out] }], null, 'now')],
    ]);
    const patients = [patient(2, 'new, out of line'), patient(1, 'silent')];
    patients[1]!.marks = [{ ...viewed(idOf(1)), state: 'settled' as const }];
    const needs = (day: number) =>
      listPatients(patients, overviews, Date.parse(`2026-04-${day}T06:00:00.000Z`)).map((row) => row.needs);
    // From 9 to 16 April: six days between.
    expect(needs(16)).toEqual([['1 of 2 out of line'], []]);
    expect(needs(19)).toContainEqual(['silent for 9 days']);
    const paused = { ...pause, from: '2026-04-12', to: '2026-04-14' };
    patients[1]!.pauses = [paused];
    // Three of the nine days are paused.
    expect(needs(19)).not.toContainEqual(['silent for 9 days']);
    expect(needs(20)).toContainEqual(['silent for 7 days']);
    patients[1]!.pauses = [{ ...paused, to: null }];
    expect(needs(30)).toEqual([['1 of 2 out of line'], []]);
  });

  it('shows nothing of what is settled, and each need once', () => {
    const sessions = [1, 2, 3].map((digit) => ({ ...calm(idOf(digit), digit), sets: [out] }));
    const settled = { ...viewed(idOf(1)), state: 'settled' as const };
    const overviews = new Map([[idOf(9), buildOverview(sessions, null, 'now')]]);
    const [row] = listPatients([{ ...patient(9, 'x'), marks: [settled] }], overviews, nowMs);
    expect(row).toMatchObject({ counts: { new: 2, viewed: 0, settled: 1 }, needs: ['1 of 2 out of line'] });
    const marks = [1, 2, 3].map((digit) => ({ ...settled, visitId: idOf(digit) }));
    expect(listPatients([{ ...patient(9, 'x'), marks }], overviews, nowMs)[0]!.needs).toEqual([]);
  });
});

describe('searchPatients(rows, search)', () => {
  it('finds all words in any order, whatever their capitals', () => {
    const rows = listPatients([patient(1, 'Blue Heron 7'), patient(2, 'Blue Otter 17')], new Map(), nowMs);
    const found = (search: string) => searchPatients(rows, search).map(({ pseudonym }) => pseudonym);
    expect(found(' otter BLUE')).toEqual(['Blue Otter 17']);
    expect(found('7')).toHaveLength(2);
    expect(found('')).toHaveLength(2);
    expect(found('lynx')).toEqual([]);
  });
});

describe('coverRows(rows)', () => {
  it('lists who needs a look that nobody took for three days, the longest first', () => {
    const patients = [1, 2, 3, 4, 5].map((digit) => patient(digit, `Blue Heron ${digit}`));
    patients[3]!.marks = [viewed(idOf(4))];
    const at = (digit: number, startedAt: string, sets = [out]) =>
      [
        idOf(digit),
        buildOverview([listedSession({ id: idOf(digit), startedAt, sets })], null, 'now'),
      ] as const;
    const overviews = new Map([
      at(1, '2026-04-17T06:00:00.000Z'), // Three days.
      at(2, '2026-04-10T06:00:00.000Z'), // Ten days.
      at(3, '2026-04-17T06:00:00.001Z'), // A moment less than three days.
      at(4, '2026-04-01T06:00:00.000Z'), // Somebody looked.
      at(5, '2026-04-01T06:00:00.000Z', [listedRecording()]), // Nothing stands out.
    ]);
    const rows = coverRows(listPatients(patients, overviews, nowMs));
    expect(rows.map(({ pseudonym, unseenDays }) => [pseudonym, unseenDays])).toEqual([
      ['Blue Heron 2', 10],
      ['Blue Heron 1', 3],
    ]);
  });
});
