import { describe, expect, it } from 'vitest';
import { newPatient } from '#documents/patient/newPatient';
import { createTestDevice } from '../../../support/openTestRepository';

const patient = newPatient(
  'Blue Heron 7',
  '6a1f0a52-1d2e-4c57-9a5b-0f6f1f0e9d66',
  '2026-02-01T04:05:06.000Z',
);

describe('repository.patients', () => {
  it('keeps a patient, changed by two tabs at once without losing either change', async () => {
    const device = createTestDevice();
    const [one, other] = [await device.open(), await device.open()];
    await one.patients.add(patient);
    await Promise.all([
      one.patients.update(patient.id, (kept) => ({ ...kept, goals: 'Stairs.' })),
      other.patients.update(patient.id, (kept) => ({ ...kept, restrictions: 'No kneeling.' })),
    ]);
    expect(await one.patients.find(patient.id)).toEqual({
      ...patient,
      goals: 'Stairs.',
      restrictions: 'No kneeling.',
    });
  });

  it('finds a patient by pseudonym, as kept by then, and nobody once the record is gone', async () => {
    const device = createTestDevice();
    const [one, other] = [await device.open(), await device.open()];
    expect(await one.patients.named('Blue Heron 7')).toBeNull();
    await other.patients.add(patient);
    expect(await one.patients.named('Blue Heron 7')).toEqual(patient);
    await other.patients.update(patient.id, (kept) => ({ ...kept, goals: 'Stairs.' }));
    expect(await one.patients.named('Blue Heron 7')).toEqual({ ...patient, goals: 'Stairs.' });
    await other.patients.remove(patient.id);
    expect(await one.patients.named('Blue Heron 7')).toBeNull();
    const second = { ...patient, id: 'ab1f0a52-1d2e-4c57-9a5b-0f6f1f0e9d66' };
    await other.patients.add(second);
    expect(await one.patients.named('Blue Heron 7')).toEqual(second);
  });

  it('refuses a second patient of the same pseudonym, and a change that could not be read back', async () => {
    const { patients } = await createTestDevice().open();
    await patients.add(patient);
    const twin = { ...patient, id: 'ab1f0a52-1d2e-4c57-9a5b-0f6f1f0e9d66' };
    await expect(patients.add(twin)).rejects.toMatchObject({ reason: 'changed' });
    await expect(patients.update(patient.id, (kept) => ({ ...kept, since: 'last spring' }))).rejects.toThrow(
      /"since"/,
    );
    expect((await patients.list()).found).toEqual([patient]);
    expect(await patients.update(twin.id, (kept) => kept)).toBeNull();
  });
});
