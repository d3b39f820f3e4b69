import { describe, expect, it } from 'vitest';
import { newPatient } from '#documents/patient/newPatient';
import { readPatient } from '#documents/patient/readPatient';

const id = '6a1f0a52-1d2e-4c57-9a5b-0f6f1f0e9d66';
const visitId = '7b0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d11';
const patient = newPatient(' Blue  Heron 7', id, '2026-02-01T04:05:06.000Z');
const viewed = { visitId, state: 'viewed' as const, at: '2026-02-02T04:05:06.000Z' };

/** As version 4 had it. */
const fourth = (() => {
  const { log, otherVersions, ...older } = patient;
  return older;
})();

/** As version 3 had it. */
const third = (() => {
  const { alsoNoted, handOvers, ...older } = fourth;
  return older;
})();

/** As version 2 had it. */
const second = (() => {
  const { onset, surgery, pauses, redFlags, prescribedRestrictions, overrides, ...rest } = third;
  const { questionnaires, ownEye, criteria, ...older } = rest;
  return older;
})();

const entry = (digit: number) => ({
  id: `${digit}c0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d11`,
  at: '2026-02-03T04:05:06.000Z',
  by: 'AB',
});
const kept = (digit: number) => ({ ...entry(digit), withdrawn: null });
const pause = { ...kept(1), from: '2026-02-04', to: null, changed: null };
const flags = { ...kept(2), on: '2026-02-01', asked: ['calf' as const], applied: [] };
const answered = {
  ...kept(4),
  on: '2026-02-01',
  of: 'global-change',
  version: null,
  title: 'Change as a whole',
  answers: [{ linkId: 'change', question: 'Since then?', answers: [{ kind: 'whole', value: 2 }] }],
  score: 2,
};
const judged = {
  at: entry(0).at,
  by: 'AB',
  recordingId: visitId,
  answers: [{ repetition: 0, verdict: 'out' }],
};
const measured = { ...kept(5), on: '2026-02-01', measure: 'bend-pct', value: 96 };
const entries = {
  onset: 'sudden',
  surgery: { what: 'invented operation', side: 'left', on: '2026-01-10' },
  pauses: [pause],
  redFlags: [flags],
  prescribedRestrictions: [
    { ...kept(3), side: 'left', setBy: 'surgeon', until: '2026-03-01', kind: 'bend', mostDeg: 90 },
    { ...kept(6), side: 'left', setBy: 'surgeon', until: null, kind: 'weight-bearing', bearing: 'partial' },
    { ...kept(7), side: 'left', setBy: 'surgeon', until: null, kind: 'open-chain' },
  ],
  overrides: [
    {
      ...entry(8),
      restriction: kept(3).id,
      task: 'lateral-step-down',
      refusal: 'Beyond the bend that is allowed.',
      why: 'Agreed by telephone.',
    },
  ],
  questionnaires: [answered],
  ownEye: [judged],
  criteria: [measured],
};

describe('readPatient(data)', () => {
  it('reads what newPatient makes, with the pseudonym in its plain form', () => {
    expect(readPatient(JSON.parse(JSON.stringify(patient)))).toEqual(patient);
    expect(patient.pseudonym).toBe('Blue Heron 7');
  });

  it('reads a record of version 1, in which nothing was decided, tested or filmed again', () => {
    const { thresholds, decisions, assessments, repeats, ...older } = second;
    expect(readPatient({ ...older, version: 1 })).toEqual(patient);
  });

  it('reads a record of version 5, which kept other versions of sessions and plans', () => {
    const beside = { kind: 'visit', of: visitId, at: '2026-02-02T04:05:06.000Z', by: 'KN', text: '{}' };
    const fifth = { ...patient, version: 5, otherVersions: [beside] };
    expect(readPatient(fifth)).toEqual({ ...patient, version: 6, otherVersions: [beside] });
  });

  it('reads a record that keeps another version of a review', () => {
    const beside = { kind: 'review', of: visitId, at: '2026-02-02T04:05:06.000Z', by: 'KN', text: '{}' };
    const kept = { ...patient, otherVersions: [beside] };
    expect(readPatient(kept)).toEqual(kept);
    expect(() => readPatient({ ...patient, otherVersions: [{ ...beside, kind: 'video' }] })).toThrow(
      /"otherVersions.0.kind"/,
    );
  });

  it('reads a record of version 4, in which nothing was signed', () => {
    expect(readPatient({ ...fourth, version: 4 })).toEqual(patient);
  });

  it('reads a record of version 3, which nobody had handed over', () => {
    expect(readPatient({ ...third, version: 3 })).toEqual(patient);
  });

  it('reads a record of version 2, in which nothing of the case was entered', () => {
    expect(readPatient({ ...second, version: 2 })).toEqual(patient);
    expect(() => readPatient({ ...second, version: 3 })).toThrow(/"onset"/);
  });

  it('reads entries of each kind as they are', () => {
    const filled = { ...patient, ...entries };
    expect(readPatient(JSON.parse(JSON.stringify(filled)))).toEqual(filled);
  });

  it.each([
    [{ ...patient, version: 7 }, /is of version 7; this program reads up to 6/],
    [{ ...patient, format: 'overfoot-plan' }, /is not a patient document/],
    [{ ...patient, painRule: { limit: 11, then: '' } }, /"painRule.limit"/],
    [{ ...patient, pseudonym: 'Blue\u200B Heron' }, /characters that are not seen/],
    [{ ...patient, thresholds: { sessions: 0 } }, /its threshold sessions is out of range/],
    [{ ...patient, pauses: [{ ...pause, to: '2026-02-03' }] }, /a pause ends before it begins/],
    [{ ...patient, redFlags: [{ ...flags, applied: ['wound'] }] }, /applies that was not asked about/],
    [{ ...patient, redFlags: [{ ...flags, asked: ['calf', 'calf'] }] }, /asked about twice/],
    [{ ...patient, pauses: [pause], criteria: [{ ...measured, id: pause.id }] }, /the same entry twice/],
    [{ ...patient, criteria: [{ ...measured, value: 151 }] }, /value for bend-pct is out of range/],
    [
      { ...patient, questionnaires: [{ ...answered, answers: [answered.answers[0], answered.answers[0]] }] },
      /the same question twice/,
    ],
    [
      { ...patient, ownEye: [{ ...judged, answers: [judged.answers[0], judged.answers[0]] }] },
      /judged by eye twice/,
    ],
    [{ ...patient, marks: [viewed, { ...viewed, state: 'settled' }] }, /a session is marked twice/],
  ])('refuses what is damaged, with a sentence (%#)', (data, sentence) => {
    expect(() => readPatient(data)).toThrow(sentence);
  });
});
