import { describe, expect, it } from 'vitest';
import { newPatient } from '#documents/patient/newPatient';
import type { PatientDocument } from '#documents/patient/patientDocument';
import { createPracticeReader } from '#features/patients/store/createPracticeReader';

const at = '2026-04-10T08:00:00.000Z';
const idOf = (digit: number) => `0b0c3c5${digit}-6d2e-4c57-9a5b-0f6f1f0e9d10`;
const patient = (digit: number) => newPatient(`Invented Heron ${digit}`, idOf(digit), at);
const withRepeat = (one: PatientDocument): PatientDocument => ({
  ...one,
  repeats: [{ at, by: 'AB', first: idOf(8), second: idOf(9) }],
});

/** Patients in memory; counts how often all are listed, and whose sessions are asked for. */
function createPractice(patients: PatientDocument[]) {
  const asked: string[] = [];
  let lists = 0;
  const reader = createPracticeReader({
    knownSessionsOf: (id) => {
      asked.push(id);
      return Promise.resolve([]);
    },
  });
  const kept = {
    patients: {
      list: () => {
        lists++;
        return Promise.resolve({ found: patients, unreadable: [] });
      },
      find: (id: string) => Promise.resolve(patients.find((one) => one.id === id) ?? null),
    },
  } as unknown as Parameters<typeof reader.read>[0];
  const readIds = async () => {
    asked.length = 0;
    await reader.read(kept);
    return [...asked];
  };
  return { reader, readIds, lists: () => lists };
}

describe('createPracticeReader(index)', () => {
  it('lists all patients once, and reads those that count from then on', async () => {
    const { readIds, lists } = createPractice([patient(1), withRepeat(patient(2)), patient(3)]);
    expect(await readIds()).toEqual([idOf(2)]);
    expect(await readIds()).toEqual([idOf(2)]);
    expect(lists()).toBe(1);
  });

  it('need not list those that were just read', async () => {
    const patients = [patient(1), withRepeat(patient(2))];
    const { reader, readIds, lists } = createPractice(patients);
    reader.know(patients);
    expect(await readIds()).toEqual([idOf(2)]);
    expect(lists()).toBe(0);
  });

  it('follows who begins to count, and who is gone', async () => {
    const patients = [patient(1), withRepeat(patient(2))];
    const { reader, readIds, lists } = createPractice(patients);
    reader.know(patients);
    patients[0] = withRepeat(patients[0]!);
    reader.follow({ kind: 'sessions', id: idOf(1) });
    expect(await readIds()).toEqual([idOf(2)]);
    reader.follow({ kind: 'patients', id: idOf(1) });
    expect(await readIds()).toEqual([idOf(2), idOf(1)]);
    patients.pop();
    expect(await readIds()).toEqual([idOf(1)]);
    expect(lists()).toBe(0);
    reader.follow({ kind: 'patients', id: null });
    expect(await readIds()).toEqual([idOf(1)]);
    expect(lists()).toBe(1);
  });
});
