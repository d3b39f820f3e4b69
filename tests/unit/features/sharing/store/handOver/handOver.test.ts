import { describe, expect, it } from 'vitest';
import type { Repository } from '#device/storage/repository';
import { newPatient } from '#documents/patient/newPatient';
import type { PatientDocument } from '#documents/patient/patientDocument';
import { createHandOver } from '#features/sharing/store/handOver/createHandOver';
import { packHandOver } from '#features/sharing/store/handOver/packHandOver';
import { packPart } from '#features/sharing/store/packedPart';
import { tombstoneName } from '#shell/receivedNotes';
import { newKeyPair, sealFor } from '#shell/seal';
import { createTestDevice } from '../../../../../support/openTestRepository';
import { smallPlan } from '../../../../../support/smallPlan';
import { smallRecording } from '../../../../../support/smallRecording';
import { smallSession } from '../../../../../support/smallSession';
import { smallSetStart } from '../../../../../support/smallSet';
import { testLog, testSigner } from '../../../../../support/testLog';

const recording = smallRecording();
const session = { ...smallSession(), sets: [{ ...smallSession().sets[0]!, sessionId: recording.id }] };
const other = {
  ...smallSession(),
  id: '7b0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d77',
  patient: 'Blue Heron 7',
  sets: [],
};
const plan = smallPlan({ patient: session.patient });
const patient = newPatient(
  session.patient,
  '6a1f0a52-1d2e-4c57-9a5b-0f6f1f0e9d66',
  '2026-02-01T04:05:06.000Z',
);
const [ownKey, theirKey, thirdKey] = await Promise.all([newKeyPair(), newKeyPair(), newKeyPair()]);
const signer = await testSigner();
const colleague = { initials: 'KN', key: theirKey.recipient };

async function device(initials: string, key: typeof ownKey) {
  const repository = await createTestDevice().open();
  const saved: Blob[] = [];
  const handOver = createHandOver({
    openRepository: () => Promise.resolve({ repository, problem: null }),
    readKeys: () => Promise.resolve([key]),
    initials: () => Promise.resolve(initials),
    signer: () => Promise.resolve(signer),
    saveBlob: (_, blob) => void saved.push(blob),
    newId: () => crypto.randomUUID(),
    now: () => new Date('2026-05-06T07:08:09Z'),
  });
  return { repository, saved, handOver, state: () => handOver.store.getState() };
}

/** Two patients, one with a session, its recording with a video, and a plan. */
async function giver(record: PatientDocument = patient) {
  const opened = await device('AB', ownKey);
  const { repository } = opened;
  const set = await repository.beginSet(smallSetStart(), () => undefined);
  await set.video!.write(new Blob(['pictures']));
  await set.endVideo();
  await set.finish(recording, 'done', session);
  await repository.sessions.save(other);
  await repository.patients.add(record);
  await repository.plans.save(plan.id, JSON.stringify(plan), '2026-02-03T04:05:06.000Z');
  await repository.plans.save('other', '{"patient":"Blue Heron 7"}');
  await repository.notes.write('keys', 'secret');
  return opened;
}

async function given(from: Awaited<ReturnType<typeof giver>>): Promise<Blob> {
  await from.handOver.give(patient.id, colleague);
  expect(from.state()).toMatchObject({ state: 'given', sentence: null });
  return from.saved.at(-1)!;
}

const recordOf = async ({ patients }: Repository) => (await patients.list()).found[0]!;

describe('createHandOver(world)', () => {
  it('brings one patient to a colleague without videos, and nothing of anybody else', async () => {
    const from = await giver();
    const file = await given(from);
    expect(from.state().given).toMatchObject({
      to: 'KN',
      contents: { sessions: 1, recordings: 1, plans: 1 },
    });
    const to = await device('KN', theirKey);
    await to.handOver.open(file);
    expect(to.state().found).toMatchObject({
      ...{ patient: patient.pseudonym, isKnown: false, by: 'AB', signer: signer.key },
      ...{ missing: 3, different: 0, workedOn: 0, deleted: 0 },
    });
    expect((await to.repository.patients.list()).found).toEqual([]);
    await to.handOver.take(false);
    expect(to.state()).toMatchObject({ state: 'taken', sentence: null });
    expect((await to.repository.sessions.list()).found).toEqual([session]);
    expect((await to.repository.plans.list()).found.map(({ id }) => id)).toEqual([plan.id]);
    const kept = await to.repository.recordings.find(recording.id);
    expect(kept?.recording).toEqual(recording);
    expect(kept?.facts).toMatchObject({ visitId: session.id, video: null, fromVideo: 'impossible' });
    expect((await to.repository.notes.read()).has('keys')).toBe(false);
    const sent = { by: 'AB', kind: 'given', colleague: 'KN', key: theirKey.recipient };
    const taken = { by: 'KN', kind: 'taken', colleague: 'AB', key: signer.key };
    expect((await recordOf(from.repository)).handOvers).toMatchObject([sent]);
    expect((await recordOf(to.repository)).handOvers).toMatchObject([sent, taken]);
    const { log, handOvers } = await recordOf(to.repository);
    expect(log.map(({ what, about, by }) => [what, about, by])).toEqual([
      ['given', handOvers[0]!.id, 'AB'],
      ['taken', handOvers[1]!.id, 'KN'],
    ]);
    const { entries, missing } = await testLog(to.repository).check(await recordOf(to.repository));
    expect(entries.map(({ standing }) => standing)).toEqual(['fits', 'fits']);
    expect(missing).toBe(0);
  });

  it('leaves what is the same, and finds nothing to add the second time', async () => {
    const file = await given(await giver());
    const to = await device('KN', theirKey);
    for (const missing of [3, 0]) {
      await to.handOver.open(file);
      expect(to.state().found).toMatchObject({ missing, different: 0 });
      await to.handOver.take(false);
    }
    expect((await to.repository.sessions.list()).found).toEqual([session]);
  });

  it('keeps what both noted: the latest counts, and the other is beside it', async () => {
    const later = {
      ...patient,
      changedAt: '2026-03-01T00:00:00.000Z',
      goals: 'Stairs',
      painfulSide: 'left' as const,
    };
    const file = await given(await giver(later));
    const to = await device('KN', theirKey);
    const here = newPatient(
      patient.pseudonym,
      '6a1f0a52-1d2e-4c57-9a5b-0f6f1f0e9d67',
      '2026-02-02T00:00:00.000Z',
    );
    await to.repository.patients.add({ ...here, goals: 'Running' });
    await to.handOver.open(file);
    expect(to.state().found).toMatchObject({ isKnown: true });
    await to.handOver.take(false);
    const record = await recordOf(to.repository);
    expect(record).toMatchObject({ id: here.id, goals: 'Stairs', painfulSide: 'left' });
    expect(record.alsoNoted).toEqual([{ at: here.changedAt, by: 'KN', notes: { goals: 'Running' } }]);
  });

  it('replaces another version of a session or set only when asked, and never a video', async () => {
    const file = await given(await giver());
    const to = await giver();
    const changed = { ...session, remark: 'Another remark.' };
    await to.repository.sessions.save(changed);
    const theirs = createHandOver({
      openRepository: () => Promise.resolve({ repository: to.repository, problem: null }),
      readKeys: () => Promise.resolve([ownKey, theirKey]),
      initials: () => Promise.resolve('KN'),
      signer: () => Promise.resolve(signer),
      saveBlob: () => undefined,
      newId: () => crypto.randomUUID(),
      now: () => new Date('2026-05-06T07:08:09Z'),
    });
    await theirs.open(file);
    expect(theirs.store.getState().found).toMatchObject({ missing: 0, different: 1 });
    await theirs.take(false);
    expect(await to.repository.sessions.find(session.id)).toEqual(changed);
    await theirs.open(file);
    await theirs.take(true);
    expect(await to.repository.sessions.find(session.id)).toEqual(session);
    expect((await to.repository.recordings.find(recording.id))?.facts.video).not.toBeNull();
  });

  it('says what was deleted here, before it comes back', async () => {
    const file = await given(await giver());
    const to = await device('KN', theirKey);
    await to.repository.notes.write(tombstoneName(session.id), '2026-05-05');
    await to.handOver.open(file);
    expect(to.state().found).toMatchObject({ deleted: 1 });
  });

  it('refuses a file for somebody else, what is none, and what was changed on its way', async () => {
    const file = await given(await giver());
    const third = await device('XY', thirdKey);
    await third.handOver.open(file);
    expect(third.state().sentence).toMatch(/sealed for another key/);
    const to = await device('KN', theirKey);
    await to.handOver.open(new Blob(['x']));
    expect(to.state().sentence).toMatch(/not a sealed file/);
    const bytes = new Uint8Array(await file.arrayBuffer());
    bytes[bytes.length - 5]! ^= 1;
    await to.handOver.open(new Blob([bytes]));
    expect(to.state().sentence).toMatch(/seal is broken.* Ask your colleague/);
    expect((await to.repository.patients.list()).found).toEqual([]);
  });

  it('refuses what is not signed, signed by another hand, or is of more than one patient', async () => {
    const { repository } = await giver();
    const to = await device('KN', theirKey);
    const facts = { createdAt: '2026-05-06T07:08:09.000Z', by: 'AB' };
    const { blob } = await packHandOver(repository, patient, facts, signer.sign);
    const [line = '', , ...parts] = (await blob.text()).split('\n');
    expect(parts.length).toBeGreaterThan(0);
    const raw = new Uint8Array(await blob.arrayBuffer());
    const headBytes = new TextEncoder().encode(line).length + 1;
    const signatureEnd = raw.indexOf(10, headBytes) + 1;
    const withHead = async (head: string, signature: string) => {
      const packed = new Blob([`${head}\n${signature}\n`, raw.slice(signatureEnd)]);
      await to.handOver.open(await sealFor([theirKey.recipient], packed));
      return to.state().sentence;
    };
    const signature = new TextDecoder().decode(raw.slice(headBytes, signatureEnd - 1));
    expect(await withHead(line, signature)).toBeNull();
    expect(await withHead(line, 'null')).toMatch(/not signed/);
    expect(await withHead(line.replace('"by":"AB"', '"by":"XY"'), signature)).toMatch(
      /changed after it was signed/,
    );
    const manifest = JSON.parse(line) as { files: unknown[] };
    const twice = JSON.stringify({ ...manifest, files: [manifest.files[0], ...manifest.files] });
    const signed = JSON.stringify(await signer.sign(new TextEncoder().encode(twice)));
    expect(await withHead(twice, signed)).toMatch(/not whole, or holds more than one patient/);
    const [first, second] = [packPart(patient), packPart(other)];
    const mixed = JSON.stringify({
      ...manifest,
      files: [
        { kind: 'patient', ...first.facts },
        { kind: 'visit', ...second.facts },
      ],
    });
    const mixedSigned = JSON.stringify(await signer.sign(new TextEncoder().encode(mixed)));
    const packed = new Blob([`${mixed}\n${mixedSigned}\n`, first.part, second.part]);
    await to.handOver.open(await sealFor([theirKey.recipient], packed));
    expect(to.state().sentence).toMatch(/Not all in it belongs to one patient/);
  });

  it('refuses ids of what is kept here of somebody else', async () => {
    const file = await given(await giver());
    const to = await device('KN', theirKey);
    await to.repository.sessions.save({ ...session, patient: 'Blue Heron 7' });
    await to.handOver.open(file);
    expect(to.state().sentence).toMatch(/same id as what is kept here of Blue Heron 7/);
  });

  it('asks for the own initials before anything is given', async () => {
    const nameless = await device('', ownKey);
    await nameless.repository.patients.add(patient);
    await nameless.handOver.give(patient.id, colleague);
    expect(nameless.state()).toMatchObject({
      state: 'idle',
      sentence: expect.stringMatching(/Enter your initials/),
    });
    expect(nameless.saved).toEqual([]);
    expect((await recordOf(nameless.repository)).handOvers).toEqual([]);
  });
});
