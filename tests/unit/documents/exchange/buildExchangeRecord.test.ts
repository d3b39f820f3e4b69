import { csvParse } from 'd3-dsv';
import { describe, expect, it } from 'vitest';
import { usualSureness } from '#core/chance/grade';
import { measure } from '#core/measurement/measure';
import { repetitionsCsv } from '#documents/csv/repetitionsCsv';
import { buildExchangeRecord, type PatientDocuments } from '#documents/exchange/buildExchangeRecord';
import type { LogEntry } from '#documents/patient/logEntry';
import { newPatient } from '#documents/patient/newPatient';
import { buildRecording } from '#documents/recording/buildRecording';
import type { SessionDocument } from '#documents/session/sessionDocument';
import { smallPlan } from '../../../support/smallPlan';
import { smallRecording, smallRecordingParts, smallSetup } from '../../../support/smallRecording';
import { smallSession } from '../../../support/smallSession';
import { filmPerson } from '../../../support/syntheticPerson';

const at = '2026-05-02T10:00:00.000Z';
const built = (change: Partial<PatientDocuments> = {}) =>
  buildExchangeRecord(
    { patient: 'invented-heron', plans: [], sessions: [smallSession()], recordings: [], ...change },
    at,
  );
const patient = newPatient('invented-heron', '44444444-4444-4444-8444-444444444444', at);
const stateOf = (change: Partial<SessionDocument>) =>
  built({ sessions: [{ ...smallSession(), ...change }] }).sessions[0]!.state;

describe('buildExchangeRecord(documents, at)', () => {
  it('has the sessions with their answers and sets', () => {
    const { patient, sessions } = built();
    expect(patient).toBe('invented-heron');
    expect(sessions).toMatchObject([
      {
        startedAt: '2026-04-05T06:07:08.000Z',
        state: 'completed',
        painBefore: 0,
        painAfter: 2,
        effort: 6,
        sets: [
          { task: 'split-stance-sit-to-stand', painDuring: 3, prescribedRepetitions: 8, result: null },
          { task: 'quad-press-hold', painDuring: null, heldMs: 30_000, result: null },
        ],
      },
    ]);
  });

  it('tells stopped from not begun, and both from one that continues', () => {
    const endedBecause = { reason: 'pain', fell: null } as const;
    expect(stateOf({ endedBecause })).toBe('stopped');
    expect(stateOf({ endedBecause, sets: [] })).toBe('not-done');
    expect(stateOf({ endedAt: null })).toBe('in-progress');
    expect(stateOf({ sets: [], isUnfilmed: true })).toBe('completed');
  });

  it('puts the oldest session first, and leaves out why nothing was done', () => {
    const [later, earlier, silent] = [
      smallSession(),
      { ...smallSession(), startedAt: '2026-04-03T06:07:08.000Z' },
      {
        ...smallSession(),
        sets: [],
        silence: { reason: 'away' as const, since: '2026-03-20T06:07:08.000Z' },
      },
    ];
    expect(built({ sessions: [later, silent, earlier] }).sessions.map(({ startedAt }) => startedAt)).toEqual([
      '2026-04-03T06:07:08.000Z',
      '2026-04-05T06:07:08.000Z',
    ]);
  });

  it('has the day after with the session that it came after, as the later one says', () => {
    const first = smallSession();
    const visitId = first.id;
    const later = {
      ...smallSession(),
      id: '22222222-2222-4222-8222-222222222222',
      startedAt: '2026-04-07T06:07:08.000Z',
      afterLast: { visitId, worst: 4, swelling: 'less' as const },
    };
    expect(built({ sessions: [later, first] }).sessions.map(({ dayAfter }) => dayAfter)).toEqual([
      { answeredAt: later.startedAt, worst: 4, swelling: 'less' },
      null,
    ]);
  });

  it('has the conditions of a set as they were noted, and the report in words', () => {
    const session = smallSession();
    const conditions = {
      stage: 'seat-46',
      seatHeightCm: 46,
      stepHeightCm: null,
      support: 'none' as const,
      load: { kind: 'weight' as const, level: '5 kg', where: 'hand' as const },
      footwear: 'shoes' as const,
      freeLeg: null,
      feedback: 'none' as const,
      isTest: true,
    };
    const sets = session.sets.map((set) => ({ ...set, conditions }));
    const report = [
      { head: '', text: 'Report of 2 May' },
      { head: 'Done', text: 'twice' },
    ];
    const record = built({ sessions: [{ ...session, sets }], report });
    expect(record.sessions[0]!.sets.map((set) => set.conditions)).toEqual([conditions, conditions]);
    expect(record.report).toEqual({ title: 'Report of 2 May', lines: [report[1]] });
    expect(built().report).toBeNull();
  });

  it('has the tests with what counts of each leg, without mistakes', () => {
    const test = {
      id: '33333333-3333-4333-8333-333333333333',
      at,
      by: 'AB',
      test: 'knee-to-wall' as const,
      asDone: 'bare feet',
      tries: { left: [9, 11, 10], right: [] },
      worstPain: 1,
      remark: '',
      withdrawn: null,
    };
    const mistake = { ...test, withdrawn: { at, by: 'AB' } };
    const { withdrawn: _, ...kept } = test;
    expect(built({ record: { ...patient, assessments: [mistake, test] } }).tests).toEqual([
      { ...kept, results: { left: 11, right: null } },
    ]);
    expect(built().tests).toEqual([]);
  });

  it('has what is noted of the complaint, and none where nothing is', () => {
    const noted = {
      ...patient,
      painfulSide: 'right' as const,
      since: '2026-03-01',
      sites: ['outer' as const],
    };
    const surgery = { what: 'a new ligament', side: 'right' as const, on: '2026-02-01' };
    expect(built({ record: { ...noted, surgery, restrictions: 'no kneeling' } })).toMatchObject({
      complaint: { painfulSide: 'right', since: '2026-03-01', onset: null, sites: ['outer'] },
      surgery,
      restrictions: 'no kneeling',
    });
    expect(built({ record: patient })).toMatchObject({ complaint: null, surgery: null, goals: [] });
    expect(built()).toMatchObject({ complaint: null, restrictions: '', prescribedRestrictions: [] });
  });

  it('has the goal in words, then the own activities of the latest day that is no mistake', () => {
    const asked = (last: string, on: string, names: string[], isMistake = false) => ({
      id: `55555555-5555-4555-8555-55555555555${last}`,
      ...{ at, by: 'AB', on, of: 'own-activities', version: null, title: 'Own activities', score: null },
      withdrawn: isMistake ? { at, by: 'AB' } : null,
      answers: names.map((question, i) => ({
        linkId: `activity-${i + 1}`,
        question,
        answers: [{ kind: 'whole' as const, value: 4 }],
      })),
    });
    const questionnaires = [
      asked('1', '2026-04-20', ['stairs', 'squatting']),
      asked('2', '2026-04-01', ['sitting']),
      asked('3', '2026-05-01', ['a mistake'], true),
    ];
    expect(built({ record: { ...patient, goals: 'To hike again.', questionnaires } }).goals).toEqual([
      { text: 'To hike again.', questionnaire: null },
      { text: 'stairs', questionnaire: questionnaires[0]!.id },
      { text: 'squatting', questionnaire: questionnaires[0]!.id },
    ]);
  });

  it('has prescribed restrictions without mistakes', () => {
    const restriction = {
      id: '66666666-6666-4666-8666-666666666666',
      ...{ at, by: 'AB', side: 'right' as const, setBy: 'the surgeon', until: '2026-05-10' },
      ...{ kind: 'bend' as const, mostDeg: 60, withdrawn: null },
    };
    const mistake = { ...restriction, withdrawn: { at, by: 'AB' } };
    const { withdrawn: _, ...kept } = restriction;
    expect(
      built({ record: { ...patient, prescribedRestrictions: [mistake, restriction] } })
        .prescribedRestrictions,
    ).toEqual([kept]);
  });

  it('has who did what as it is in the record, and nothing without one', () => {
    const entry = {
      ...{ id: patient.id, at, by: 'AB', what: 'review' as const, about: smallSession().id },
      ...{ after: [], key: 'key', signature: 'signature' },
    };
    expect(built({ record: { ...patient, log: [entry] } }).log).toEqual([entry]);
    expect(built().log).toEqual([]);
  });

  it('has who said that a session is settled, also in a later session', () => {
    const first = smallSession();
    const settlement = (by: 'professional' | 'therapist', who: string) => ({ by, who, at });
    const later = {
      ...smallSession(),
      id: '22222222-2222-4222-8222-222222222222',
      startedAt: '2026-04-07T06:07:08.000Z',
      settles: [{ visitId: first.id, ...settlement('professional', 'my doctor') }],
    };
    const signed = { ...first, settles: [{ visitId: first.id, ...settlement('therapist', 'AB') }] };
    expect(built({ sessions: [later, signed] }).sessions.map(({ settled }) => settled)).toEqual([
      [settlement('therapist', 'AB'), settlement('professional', 'my doctor')],
      [],
    ]);
  });

  it('has who opened again what was settled, the latest', () => {
    const first = smallSession();
    const entry = (what: LogEntry['what'], about: string, hour: number, by = 'AB'): LogEntry => ({
      id: `00000000-0000-4000-8000-00000000000${hour}`,
      at: `2026-04-07T0${hour}:00:00.000Z`,
      ...{ by, what, about, after: [], key: '', signature: '' },
    });
    const record = {
      ...newPatient('Heron 7', '6a1f0a52-1d2e-4c57-9a5b-0f6f1f0e9d66', at),
      log: [
        entry('concern-settled', first.id, 1),
        entry('review-withdrawn', first.id, 2),
        entry('review-withdrawn', first.id, 4, 'KN'),
        entry('review-withdrawn', '33333333-3333-4333-8333-333333333333', 5),
      ],
    };
    expect(built({ sessions: [first], record }).sessions.map(({ reopened }) => reopened)).toEqual([
      { by: 'KN', at: '2026-04-07T04:00:00.000Z' },
    ]);
    expect(built({ sessions: [first] }).sessions[0]!.reopened).toBeNull();
  });

  it('says who did what to a recording by hand, and what was remarked', () => {
    const at = '2026-04-06T08:00:00.000Z';
    const { limits } = smallRecordingParts();
    const recording = {
      ...smallRecording(),
      corrections: [{ change: { kind: 'working-side' as const, side: 'left' as const }, by: 'AB', at }],
      review: {
        limitsSet: [{ limits, by: '', at }],
        remarks: [{ atMs: null, text: 'Tired today.', by: 'AB', at }],
        cues: [{ atMs: 1200, text: 'Knee over the foot.' }],
        reviewed: { by: 'CD', at },
      },
    };
    const [set] = built({ recordings: [recording] }).sessions[0]!.sets;
    expect(set!.result).toMatchObject({
      recordedAt: recording.createdAt,
      limitsDeg: limits['knee-angle'],
      hands: [
        { what: 'corrected', said: 'The left leg is the working leg.', by: 'AB', at },
        { what: 'limits', said: '', by: '', at },
        { what: 'reviewed', said: '', by: 'CD', at },
      ],
      remarks: [
        { kind: 'remark', text: 'Tired today.', atMs: null, by: 'AB', at },
        { kind: 'cue', text: 'Knee over the foot.', atMs: 1200, by: '', at: null },
      ],
    });
  });

  it('has the plan in words, and says that demo data is invented', () => {
    const plan = smallPlan({ perWeek: 3, note: 'Invented.' });
    const { plans, note } = built({ plans: [plan] });
    expect(plans).toMatchObject([
      {
        id: plan.id,
        perWeek: 3,
        items: [
          { task: 'split-stance-sit-to-stand', dose: '2 sets of 5 repetitions, right leg' },
          { task: 'quad-press-hold', dose: '2 holds of 12 seconds, left leg' },
        ],
      },
    ]);
    expect(note).toBe('Invented.');
  });

  it('has the same angle of a set as the CSV of its repetitions', () => {
    const parts = smallRecordingParts();
    const { track } = filmPerson({
      ...smallSetup,
      repetitions: [{ peakDeg: 13 }, { peakDeg: -4 }, { peakDeg: 6 }, { peakDeg: 2 }],
      rateHz: 20,
      noisePx: 0.8,
      seed: 5,
    });
    const measurement = measure(track, smallSetup);
    const recording = buildRecording({ ...parts, track, measurement });
    const [session] = built({ recordings: [recording] }).sessions;
    const { result } = session!.sets[0]!;
    const csv = repetitionsCsv([{ measurement, limits: parts.limits, sureness: usualSureness, note: '' }]);
    const angles = csvParse(csv.slice(1)).map((row) => Number(row['knee_angle_largest_deg']));
    expect(angles).toHaveLength(4);
    // The CSV has two decimals.
    expect(result!.peak!.meanDeg).toBeCloseTo(angles.reduce((sum, deg) => sum + deg) / 4, 2);
    expect(result).toMatchObject({
      repetitions: 4,
      measuringVersion: recording.derived.measuringVersion,
      inLine: { of: 4 },
    });
  });
});
