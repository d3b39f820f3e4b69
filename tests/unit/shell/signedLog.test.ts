import { describe, expect, it } from 'vitest';
import { newPatient } from '#documents/patient/newPatient';
import { createTestDevice } from '../../support/openTestRepository';
import { testLog, testSigner } from '../../support/testLog';

const patient = newPatient(
  'Blue Heron 7',
  '6a1f0a52-1d2e-4c57-9a5b-0f6f1f0e9d66',
  '2026-02-01T04:05:06.000Z',
);

/** A device with the patient and two entries. */
async function withTwo() {
  const repository = await createTestDevice().open();
  await repository.patients.add(patient);
  const log = testLog(repository, await testSigner());
  await log.add(patient.pseudonym, { what: 'review', about: 'first' });
  await log.add(patient.pseudonym, { what: 'limits', about: 'second', by: 'KN' });
  const kept = (await repository.patients.find(patient.id))!;
  return { repository, log, kept };
}

describe('createSignedLog(world)', () => {
  it('signs each entry, which names those before it', async () => {
    const { log, kept } = await withTwo();
    const [first, second] = kept.log;
    expect(first).toMatchObject({ by: 'AB', what: 'review', about: 'first', after: [] });
    expect(second).toMatchObject({ by: 'KN', after: [first!.id] });
    const { entries, missing } = await log.check(kept);
    expect(entries.map(({ standing, isOwn }) => [standing, isOwn])).toEqual([
      ['fits', true],
      ['fits', true],
    ]);
    expect(missing).toBe(0);
  });

  it.each([
    ['initials', { by: 'XY' }],
    ['time', { at: '2026-04-11T08:00:00.000Z' }],
    ['what was done', { what: 'review-withdrawn' as const }],
    ['what it was done to', { about: 'another' }],
    ['what came before', { after: [patient.id] }],
  ])('shows an entry whose %s was changed as one that does not fit', async (_, change) => {
    const { log, kept } = await withTwo();
    const changed = { ...kept, log: [{ ...kept.log[0]!, ...change }, kept.log[1]!] };
    const { entries } = await log.check(changed);
    expect(entries.map(({ standing }) => standing)).toEqual(['wrong', 'fits']);
  });

  it('shows an entry of another patient, and one under another device’s key, as such', async () => {
    const { log, kept } = await withTwo();
    const moved = await log.check({ ...kept, pseudonym: 'Red Lynx 12' });
    expect(moved.entries.map(({ standing }) => standing)).toEqual(['wrong', 'wrong']);
    const { key } = await testSigner();
    const passedOff = await log.check({ ...kept, log: [{ ...kept.log[0]!, key }] });
    expect(passedOff.entries.map(({ standing }) => standing)).toEqual(['wrong']);
  });

  it('counts what is missing against what this device saw, each time', async () => {
    const { repository, log, kept } = await withTwo();
    const [first] = kept.log;
    const shortened = { ...kept, log: [first!] };
    expect((await log.check(shortened)).missing).toBe(1);
    expect((await log.check(shortened)).missing).toBe(1);
    expect((await log.check(kept)).missing).toBe(0);
    // Another device saw nothing of it before.
    await repository.notes.remove(`log-seen:${patient.id}`);
    expect((await log.check({ ...kept, log: [first!] })).missing).toBe(0);
  });

  it('says that an entry is not signed where the device could not', async () => {
    const repository = await createTestDevice().open();
    await repository.patients.add(patient);
    const log = testLog(repository);
    await log.add(patient.pseudonym, { what: 'review', about: 'first' });
    const kept = (await repository.patients.find(patient.id))!;
    expect((await log.check(kept)).entries).toMatchObject([{ standing: 'unsigned', isOwn: false }]);
  });

  it('adds nothing where there is no record, and storage refuses to lose an entry', async () => {
    const { repository, log, kept } = await withTwo();
    await log.add('Red Lynx 12', { what: 'review', about: 'x' });
    expect((await repository.patients.list()).found).toEqual([kept]);
    await expect(repository.patients.update(patient.id, (one) => ({ ...one, log: [] }))).rejects.toThrow(
      /never changed or removed/,
    );
    expect(await repository.patients.find(patient.id)).toEqual(kept);
  });
});
