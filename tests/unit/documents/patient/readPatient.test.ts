import { describe, expect, it } from 'vitest';
import { mergePatients, withMark, withPlans } from '#documents/patient/mergePatients';
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

  it.each([
    [{ ...patient, version: 2 }, /is of version 2; this program reads up to 1/],
    [{ ...patient, format: 'overfoot-plan' }, /is not a patient document/],
    [{ ...patient, painRule: { limit: 11, then: '' } }, /"painRule.limit"/],
    [{ ...patient, pseudonym: 'Blue\u200B Heron' }, /characters that are not seen/],
    [{ ...patient, marks: [viewed, { ...viewed, state: 'settled' }] }, /a session is marked twice/],
  ])('refuses what is damaged, with a sentence (%#)', (data, sentence) => {
    expect(() => readPatient(data)).toThrow(sentence);
  });
});

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
});
