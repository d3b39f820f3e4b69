import { describe, expect, it } from 'vitest';
import type { Repository } from '#device/storage/repository';
import { newPatient } from '#documents/patient/newPatient';
import type { PatientDocument } from '#documents/patient/patientDocument';
import { readOtherVersions } from '#features/patients/store/readOtherVersions';
import { createClinic } from '#features/sharing/store/createClinic';
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

/** The other versions that the record keeps, with what their texts say. */
const othersOf = async (repository: Repository) =>
  (await recordOf(repository)).otherVersions.map(({ text, ...rest }) => ({
    ...rest,
    document: JSON.parse(text) as unknown,
  }));
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

  /** KN's device with the same patient, on which AB's file opens. */
  async function taker() {
    const to = await giver();
    const handOver = createHandOver({
      openRepository: () => Promise.resolve({ repository: to.repository, problem: null }),
      readKeys: () => Promise.resolve([ownKey, theirKey]),
      initials: () => Promise.resolve('KN'),
      signer: () => Promise.resolve(signer),
      saveBlob: () => undefined,
      newId: () => crypto.randomUUID(),
      now: () => new Date('2026-05-06T07:08:09Z'),
    });
    return { repository: to.repository, handOver, found: () => handOver.store.getState().found };
  }

  it('replaces another version of a set only when asked, and never a video', async () => {
    const file = await given(await giver());
    const to = await taker();
    const kept = (await to.repository.recordings.findHead(recording.id))!;
    const changed = { ...kept.recording, note: 'Another note.' };
    await to.repository.recordings.update(changed, kept.edition);
    const noteOf = async () => (await to.repository.recordings.find(recording.id))?.recording.note;
    await to.handOver.open(file);
    expect(to.found()).toMatchObject({ missing: 0, versions: 0, different: 1 });
    await to.handOver.take(false);
    expect(await noteOf()).toBe('Another note.');
    await to.handOver.open(file);
    await to.handOver.take(true);
    expect(await noteOf()).toBe(recording.note);
    expect((await to.repository.recordings.find(recording.id))?.facts.video).not.toBeNull();
  });

  it('keeps the corrections of the set that goes beside the one that stays or replaces it', async () => {
    const correction = (by: string, atMs: number) => ({
      change: { kind: 'exclude' as const, atMs, reason: 'Lost balance' },
      by,
      at: '2026-04-06T07:08:09.000Z',
    });
    const correct = async (repository: Repository, by: string, atMs: number) => {
      const kept = (await repository.recordings.findHead(recording.id))!;
      const corrections = [correction(by, atMs)];
      await repository.recordings.update({ ...kept.recording, corrections }, kept.edition);
    };
    for (const [replaces, who, atMs] of [
      [false, 'AB', 2000],
      [true, 'KN', 5000],
    ] as const) {
      const [from, to] = [await giver(), await taker()];
      await correct(from.repository, 'AB', 2000);
      await correct(to.repository, 'KN', 5000);
      const file = await given(from);
      for (let again = 0; again < 2; again++) {
        await to.handOver.open(file);
        await to.handOver.take(replaces);
      }
      expect(await othersOf(to.repository)).toEqual([
        {
          kind: 'review',
          of: recording.id,
          at: '2026-05-06T07:08:09.000Z',
          by: who,
          document: {
            createdAt: recording.createdAt,
            task: recording.setup.task,
            side: recording.setup.side,
            corrections: [correction(who, atMs)],
            cues: [],
          },
        },
      ]);
    }
  });

  it.each([false, true])(
    'keeps remarks and limits of both versions of a set, replaced: %s',
    async (replaces) => {
      const [from, to] = [await giver(), await taker()];
      const review = async ({ repository }: { repository: Repository }, by: string, day: number) => {
        const kept = (await repository.recordings.findHead(recording.id))!;
        const at = `2026-04-0${day}T07:08:09.000Z`;
        const limits = { ...kept.recording.limits, 'knee-angle': { least: -day, most: day } };
        const work = {
          limitsSet: [{ limits, by, at }],
          remarks: [{ atMs: 1000 * day, text: `Said by ${by}`, by, at }],
          cues: [],
          reviewed: null,
        };
        await repository.recordings.update({ ...kept.recording, limits, review: work }, kept.edition);
      };
      await review(from, 'AB', 5);
      await review(to, 'KN', 6);
      await to.handOver.open(await given(from));
      await to.handOver.take(replaces);
      const kept = (await to.repository.recordings.find(recording.id))!.recording;
      expect(kept.review!.remarks.map(({ text }) => text)).toEqual(['Said by AB', 'Said by KN']);
      expect(kept.review!.limitsSet.map(({ by }) => by)).toEqual(['AB', 'KN']);
      expect(kept.limits['knee-angle']).toEqual({ least: -6, most: 6 });
    },
  );

  it('keeps both versions of a session: the one here counts where neither was signed', async () => {
    const file = await given(await giver());
    const to = await taker();
    const changed = { ...session, remark: 'Another remark.' };
    await to.repository.sessions.save(changed);
    for (const replaces of [true, false]) {
      await to.handOver.open(file);
      expect(to.found()).toMatchObject({ missing: 0, versions: 1, different: 0 });
      await to.handOver.take(replaces);
      expect(await to.repository.sessions.find(session.id)).toEqual(changed);
      expect(await othersOf(to.repository)).toEqual([
        {
          kind: 'visit',
          of: session.id,
          at: '2026-05-06T07:08:09.000Z',
          by: 'AB',
          document: session,
        },
      ]);
    }
  });

  it('keeps both versions of a session: the one that was signed last counts', async () => {
    const from = await giver();
    const settled = {
      ...session,
      settles: [{ visitId: session.id, by: 'therapist' as const, who: 'AB', at: '2026-04-12T08:00:00.000Z' }],
    };
    await from.repository.sessions.save(settled);
    await testLog(from.repository, signer).add(patient.pseudonym, {
      what: 'concern-settled',
      about: session.id,
    });
    const to = await taker();
    const changed = { ...session, remark: 'Another remark.' };
    await to.repository.sessions.save(changed);
    await to.handOver.open(await given(from));
    await to.handOver.take(false);
    expect(await to.repository.sessions.find(session.id)).toEqual(settled);
    expect(await othersOf(to.repository)).toMatchObject([{ by: 'KN', document: changed }]);
  });

  it('keeps what was settled in either version of a session, and nothing beside where no more differs', async () => {
    const settled = (who: string, at: string) => ({
      ...session,
      settles: [{ visitId: session.id, by: 'therapist' as const, who, at }],
    });
    const from = await giver();
    await from.repository.sessions.save(settled('AB', '2026-04-12T08:00:00.000Z'));
    const to = await taker();
    await to.repository.sessions.save(settled('KN', '2026-04-13T08:00:00.000Z'));
    await to.handOver.open(await given(from));
    await to.handOver.take(false);
    const kept = await to.repository.sessions.find(session.id);
    expect(kept!.settles.map(({ who }) => who)).toEqual(['KN', 'AB']);
    expect(await othersOf(to.repository)).toEqual([]);
  });

  it('keeps both versions of a plan: the one that was given last counts', async () => {
    const from = await giver();
    const later = JSON.stringify({ ...plan, painLimit: 3 });
    await from.repository.plans.save(plan.id, later, '2026-02-04T00:00:00.000Z');
    const to = await taker();
    await to.handOver.open(await given(from));
    await to.handOver.take(false);
    expect(await to.repository.plans.find(plan.id)).toBe(later);
    const record = await recordOf(to.repository);
    expect(record.otherVersions).toMatchObject([{ kind: 'plan', by: 'KN', text: JSON.stringify(plan) }]);
    expect(await readOtherVersions(to.repository, record)).toMatchObject([
      { by: 'KN', differences: [`Pain limit: ${plan.painLimit}; the one that counts: 3.`] },
    ]);
    // What counts again is no other version any more.
    await to.repository.plans.save(plan.id, JSON.stringify(plan));
    expect(await readOtherVersions(to.repository, record)).toEqual([]);
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

  it('says where it is opened, when it is opened as a sent session', async () => {
    const file = await given(await giver());
    const { repository } = await device('KN', theirKey);
    const keys = [thirdKey, theirKey];
    const clinic = createClinic({
      openRepository: () => Promise.resolve({ repository, problem: null }),
      firstKeys: keys,
      readKeys: () => Promise.resolve(keys),
      writeKeys: () => Promise.resolve(),
      saveBlob: () => undefined,
      now: () => new Date('2026-05-06T07:08:09Z'),
    });
    await clinic.openFiles([new File([file], 'overfoot-hand-over.age')]);
    expect(clinic.store.getState().incoming).toMatchObject([
      { state: 'refused', sentence: expect.stringMatching(/Open it under “Take over”/) },
    ]);
    expect((await repository.patients.list()).found).toEqual([]);
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
