import { describe, expect, it } from 'vitest';
import { newPatient } from '#documents/patient/newPatient';
import { readPatient } from '#documents/patient/readPatient';

const id = '6a1f0a52-1d2e-4c57-9a5b-0f6f1f0e9d66';
const visitId = '7b0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d11';
const patient = newPatient(' Blue  Heron 7', id, '2026-02-01T04:05:06.000Z');
const viewed = { visitId, state: 'viewed' as const, at: '2026-02-02T04:05:06.000Z' };

describe('readPatient(data)', () => {
  it('reads what newPatient makes, with the pseudonym in its plain form', () => {
    expect(readPatient(JSON.parse(JSON.stringify(patient)))).toEqual(patient);
    expect(patient.pseudonym).toBe('Blue Heron 7');
  });

  it('reads a record of version 1, in which nothing was decided, tested or filmed again', () => {
    const { thresholds, decisions, assessments, repeats, ...older } = patient;
    expect(readPatient({ ...older, version: 1 })).toEqual(patient);
  });

  it.each([
    [{ ...patient, version: 3 }, /is of version 3; this program reads up to 2/],
    [{ ...patient, format: 'overfoot-plan' }, /is not a patient document/],
    [{ ...patient, painRule: { limit: 11, then: '' } }, /"painRule.limit"/],
    [{ ...patient, pseudonym: 'Blue\u200B Heron' }, /characters that are not seen/],
    [{ ...patient, thresholds: { sessions: 0 } }, /its threshold sessions is out of range/],
    [{ ...patient, marks: [viewed, { ...viewed, state: 'settled' }] }, /a session is marked twice/],
  ])('refuses what is damaged, with a sentence (%#)', (data, sentence) => {
    expect(() => readPatient(data)).toThrow(sentence);
  });
});
