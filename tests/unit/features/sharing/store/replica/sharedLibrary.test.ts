import { describe, expect, it } from 'vitest';
import { withEntry, withoutEntry } from '#documents/library/libraryChanges';
import {
  emptyLibrary,
  libraryBounds,
  type LibraryDocument,
  type LibraryEntry,
} from '#documents/library/libraryDocument';
import { contentHash } from '#documents/practice/contentHash';
import { createLibrary } from '#features/planning/store/library/createLibrary';
import { sealShared, type SharedFacts } from '#features/sharing/store/replica/sealShared';
import { newKeyPair, type KeyPair } from '#shell/seal';
import type { ReplicaServer } from '#tools/commands/tools/practice/startReplicaServer';
import { eachWithServer } from '../../../../../support/practice/eachWithServer';
import { inventedPatient, inventedSession } from '../../../../../support/practice/invented';
import {
  practiceDevice,
  practiceOf,
  type PracticeDevice,
} from '../../../../../support/practice/practiceDevice';
import { documentsOn, headOf, putOn } from '../../../../../support/practice/serverDocuments';

let server: ReplicaServer;
eachWithServer((one) => (server = one));

const idOf = (digit: number) => `${digit}b0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d11`;
const words = (digit: number, day: number, says: string): LibraryEntry<'texts'> => ({
  id: idOf(digit),
  at: `2026-04-0${day}T06:00:00.000Z`,
  by: 'AB',
  name: `Words ${digit}`,
  text: says,
});
const stagesOf = (day: number, says: string): LibraryEntry<'stages'> => ({
  exercise: 'wall-sit-hold',
  at: `2026-04-0${day}T06:00:00.000Z`,
  by: 'AB',
  stages: [{ id: 'short', words: says, holds: { count: 3, seconds: 10 } }],
});
const libraryOf = async ({ repository }: PracticeDevice) => (await repository.library.read()).library;
const change = ({ repository }: PracticeDevice, work: (library: LibraryDocument) => LibraryDocument) =>
  repository.library.change(work);
const keep = (device: PracticeDevice, entry: LibraryEntry<'texts'>) =>
  change(device, (library) => withEntry(library, 'texts', entry));
const remove = (device: PracticeDevice, digit: number, day: number) =>
  change(device, (library) => withoutEntry(library, 'texts', idOf(digit), `2026-04-0${day}T07:00:00.000Z`));
const saidBy = async (device: PracticeDevice) => (await libraryOf(device)).texts.map(({ text }) => text);
const reasonsOf = (device: PracticeDevice) =>
  device.replication.refused
    .list()
    .map(({ reason }) => reason)
    .sort();
const rounds = async (devices: readonly PracticeDevice[], count = 3) => {
  for (let round = 0; round < count; round++) for (const one of devices) await one.exchange(server);
};
const expectOne = async (devices: readonly PracticeDevice[]) => {
  const all = await Promise.all(devices.map(libraryOf));
  for (const one of all) expect(one).toEqual(all[0]);
  return all[0]!;
};
const two = async () => (await practiceOf('AB', 'KN')) as [PracticeDevice, PracticeDevice];

describe('the practice’s library, shared through a server', () => {
  it('comes to a device that has none, with earlier stages, and later changes go both ways', async () => {
    const [ab, kn] = await two();
    const exercises = { 'wall-sit-hold': stagesOf(1, 'Ten seconds.').stages };
    const stages = { format: 'overfoot-stages', version: 1, exercises };
    await ab.repository.notes.write('stages', JSON.stringify(stages));
    await keep(ab, words(1, 1, 'Little and often.'));
    await ab.exchange(server);
    expect(await documentsOn(server)).toHaveLength(1);
    await kn.exchange(server);
    expect(await expectOne([ab, kn])).toMatchObject({
      texts: [words(1, 1, 'Little and often.')],
      stages: [{ exercise: 'wall-sit-hold', stages: exercises['wall-sit-hold'] }],
    });
    await change(kn, (library) => withEntry(library, 'stages', stagesOf(2, 'Twelve seconds.')));
    await kn.exchange(server);
    await ab.exchange(server);
    expect((await expectOne([ab, kn])).stages).toEqual([stagesOf(2, 'Twelve seconds.')]);
    expect(await documentsOn(server)).toHaveLength(1);
    // Nothing is left to say.
    const before = [await ab.replica.changes(0, 100), await kn.replica.changes(0, 100)];
    await rounds([ab, kn]);
    expect([await ab.replica.changes(0, 100), await kn.replica.changes(0, 100)]).toEqual(before);
  });

  it('takes earlier stages over where nobody has looked at the library yet', async () => {
    const ab = await practiceDevice('AB');
    const exercises = { 'wall-sit-hold': stagesOf(1, 'Ten seconds.').stages };
    ab.replication.stop();
    await ab.repository.notes.write(
      'stages',
      JSON.stringify({ format: 'overfoot-stages', version: 1, exercises }),
    );
    await ab.reopen();
    await ab.exchange(server);
    expect(await documentsOn(server)).toHaveLength(1);
  });

  it('becomes one where each of two devices had its own, and stays so', async () => {
    const [ab, kn] = await two();
    await keep(ab, words(1, 1, 'Ours.'));
    await keep(kn, words(2, 2, 'Theirs.'));
    await rounds([ab, kn]);
    await expectOne([ab, kn]);
    expect(await saidBy(ab)).toEqual(['Ours.', 'Theirs.']);
    const before = [await ab.replica.changes(0, 100), await kn.replica.changes(0, 100)];
    await rounds([kn, ab]);
    expect([await ab.replica.changes(0, 100), await kn.replica.changes(0, 100)]).toEqual(before);
    // Each writes where its own lies, and a third one reads both.
    await keep(kn, words(2, 3, 'Theirs, changed.'));
    await rounds([kn, ab]);
    expect(await saidBy(ab)).toEqual(['Ours.', 'Theirs, changed.']);
    const pq = await practiceDevice('PQ');
    for (const one of [ab, kn]) {
      await pq.add(one);
      await one.add(pq);
    }
    await rounds([ab, kn, pq]);
    await expectOne([ab, kn, pq]);
    expect(reasonsOf(pq)).toEqual([]);
  });

  it('comes to the same on three devices that changed it apart: the last change of each entry counts', async () => {
    const all = await practiceOf('AB', 'KN', 'PQ');
    const [ab, kn, pq] = all as [PracticeDevice, PracticeDevice, PracticeDevice];
    for (const digit of [1, 2, 3]) await keep(ab, words(digit, 1, 'First.'));
    await rounds(all);
    await keep(ab, words(1, 3, 'By AB on the 3rd.'));
    await keep(kn, words(1, 4, 'By KN on the 4th.'));
    await keep(pq, words(1, 2, 'By PQ on the 2nd.'));
    await remove(ab, 2, 2); // Changed later elsewhere.
    await keep(kn, words(2, 5, 'Changed after that.'));
    await remove(pq, 3, 6); // Changed before that elsewhere.
    await keep(kn, words(3, 5, 'Changed before that.'));
    await rounds(all, 4);
    const { texts, removed } = await expectOne(all);
    expect(texts.map(({ name, text }) => [name, text])).toEqual([
      ['Words 1', 'By KN on the 4th.'],
      ['Words 2', 'Changed after that.'],
    ]);
    expect(removed).toEqual([{ kind: 'texts', key: idOf(3), at: '2026-04-06T07:00:00.000Z' }]);
    const before = await Promise.all(all.map((one) => one.replica.changes(0, 100)));
    await rounds(all);
    expect(await Promise.all(all.map((one) => one.replica.changes(0, 100)))).toEqual(before);
  });

  it('decides the same on all where an entry was changed at one time, and keeps what was taken out out', async () => {
    const all = await practiceOf('AB', 'KN', 'PQ');
    await keep(all[0]!, words(1, 1, 'First.'));
    await keep(all[0]!, words(2, 1, 'To be removed.'));
    await rounds(all);
    for (const [index, one] of all.entries()) await keep(one, words(1, 4, `Version ${index}.`));
    await remove(all[1]!, 2, 5);
    await rounds(all, 4);
    expect((await expectOne(all)).texts).toEqual([words(1, 4, 'Version 2.')]);
  });

  it('is shown at once where it is open', async () => {
    const [ab, kn] = await two();
    const library = await createLibrary({
      ...kn.repository.library,
      watch: (listener) => void kn.repository.subscribe(listener),
      initials: () => Promise.resolve('KN'),
      signer: () => Promise.resolve(null),
      saveFile: () => undefined,
      newId: () => crypto.randomUUID(),
      now: () => new Date('2026-04-09T06:00:00.000Z'),
    });
    await keep(ab, words(1, 1, 'Little and often.'));
    await ab.exchange(server);
    await kn.exchange(server);
    await expect
      .poll(() => library.store.getState().library.texts)
      .toEqual([words(1, 1, 'Little and often.')]);
    // Undoing is a change like any other, and arrives as one.
    await library.keep('texts', { name: 'Words 1', text: 'By KN.' });
    await rounds([kn, ab]);
    expect(await saidBy(ab)).toEqual(['By KN.']);
    await library.undo();
    await rounds([kn, ab]);
    expect(await saidBy(ab)).toEqual(['Little and often.']);
  });

  it('loses and doubles nothing while the line is cut 20 times and programs are closed', async () => {
    const [ab, kn] = await two();
    let seed = 7;
    const random = (below: number) => (seed = (seed * 48_271) % 2_147_483_647) % below;
    const sent: string[] = [];
    let cuts = 0;
    for (let tries = 0; cuts < 20 && tries < 300; tries++) {
      const device = [ab, kn][random(2)]!;
      if (sent.length < 60) {
        const id = `00000000-0000-4000-8000-${String(tries).padStart(12, '0')}`;
        await keep(device, { ...words(1, 1, `Entry ${tries}.`), id });
        sent.push(id);
      }
      server.cutAfter(1 + random(6000));
      await device.exchange(server).catch(() => undefined);
      if (server.isCut()) cuts++;
      server.mend();
      if (random(4) === 0) await device.reopen();
    }
    expect(cuts).toBe(20);
    await rounds([ab, kn]);
    const { texts } = await expectOne([ab, kn]);
    expect(texts.map(({ id }) => id)).toEqual([...sent].sort());
  });

  it('leaves the others alone where everything on one device is deleted', async () => {
    const [ab, kn] = await two();
    await keep(ab, words(1, 1, 'Little and often.'));
    await rounds([ab, kn]);
    await ab.repository.eraseAll();
    await ab.exchange(server);
    await kn.exchange(server);
    expect(await saidBy(kn)).toEqual(['Little and often.']);
  });

  it('refuses what is more than one can hold, with everything left as it was, until something is taken out', async () => {
    const [ab, kn] = await two();
    const many = (from: number): LibraryDocument => ({
      ...emptyLibrary,
      texts: Array.from({ length: libraryBounds.entries }, (_, index) => ({
        ...words(1, 1, 'x'),
        id: `00000000-0000-4000-8000-${String(from + index).padStart(12, '0')}`,
      })),
    });
    await change(ab, () => many(0));
    await change(kn, () => many(1));
    await rounds([ab, kn]);
    expect(await libraryOf(ab)).toEqual(many(0));
    expect(await libraryOf(kn)).toEqual(many(1));
    expect([reasonsOf(ab), reasonsOf(kn)]).toEqual([['library-full'], ['library-full']]);
    await change(kn, (library) =>
      withoutEntry(library, 'texts', library.texts.at(-1)!.id, '2026-05-01T00:00:00.000Z'),
    );
    await kn.exchange(server);
    expect([reasonsOf(ab), reasonsOf(kn)]).toEqual([['library-full'], []]);
    await rounds([ab, kn]);
    const { texts } = await expectOne([ab, kn]);
    expect(texts).toEqual(many(0).texts);
    expect([reasonsOf(ab), reasonsOf(kn)]).toEqual([[], []]);
  });

  it('leaves a library that can’t be read as it is, says so, and shares all else', async () => {
    const [ab, kn] = await two();
    const heron = inventedPatient('Blue Heron 7');
    await keep(ab, words(1, 1, 'Little and often.'));
    await ab.repository.patients.add(heron);
    await kn.repository.notes.write('library', '{"format":"overfoot-library","version":9}');
    await rounds([ab, kn]);
    expect((await kn.repository.patients.list()).found).toEqual([heron]);
    expect((await kn.repository.notes.read()).get('library')).toContain('"version":9');
    expect(reasonsOf(kn)).toEqual(['library-damaged']);
    await kn.repository.notes.write('library', JSON.stringify(emptyLibrary));
    await rounds([kn]);
    expect(await saidBy(kn)).toEqual(['Little and often.']);
    expect(reasonsOf(kn)).toEqual([]);
  });

  it('lets a device with an earlier program read all else: only the library is of a version that is new to it', async () => {
    const [ab, kn] = await two();
    const heron = inventedPatient('Blue Heron 7');
    await ab.repository.patients.add(heron);
    await ab.repository.sessions.save(inventedSession('Blue Heron 7'));
    await keep(ab, words(1, 1, 'Little and often.'));
    await ab.exchange(server);
    const heads = await Promise.all((await documentsOn(server)).map(({ sealed }) => headOf(sealed, kn.key)));
    expect(heads.map(({ kind, version, patientId }) => [kind, version, patientId]).sort()).toEqual([
      ['library', 2, null],
      ['patient', 1, heron.id],
      ['session', 1, heron.id],
    ]);
  });

  it('is tried again once the program was updated, where an earlier one could not read it', async () => {
    const [ab, kn] = await two();
    await keep(ab, words(1, 1, 'Little and often.'));
    await ab.exchange(server);
    const [stored] = await documentsOn(server);
    await kn.exchange(server);
    // As an earlier program leaves it: refused, and nothing taken in.
    await kn.repository.notes.remove('library');
    await kn.repository.replica.put(`refused:${stored!.id}`, 'invalid');
    for (const { key } of await kn.repository.replica.list('row:')) await kn.repository.replica.remove(key);
    expect(await saidBy(kn)).toEqual([]);
    await kn.reopen();
    await kn.exchange(server);
    expect(await saidBy(kn)).toEqual(['Little and often.']);
    expect(reasonsOf(kn)).toEqual([]);
  });

  describe('with a server or a colleague that can’t be trusted', () => {
    const kept = { ...emptyLibrary, texts: [words(1, 1, 'Little and often.')] };
    const forged = { ...emptyLibrary, texts: [words(1, 9, 'Forged.')] };
    const factsFor = (devices: readonly PracticeDevice[], other: Partial<SharedFacts> = {}): SharedFacts => ({
      replicaId: crypto.randomUUID(),
      recipients: devices.map(({ key }) => key.recipient),
      takenOut: [],
      sealedAt: '2026-05-06T07:08:09.000Z',
      by: 'AB',
      kind: 'library',
      id: 'library',
      patientId: null,
      sessionId: null,
      ancestors: [contentHash('library', kept)],
      ...other,
    });
    const put = async (facts: SharedFacts, document: object | null, sealer: KeyPair) =>
      putOn(server, {
        _id: facts.replicaId,
        sealed: await sealShared(facts, document as LibraryDocument | null, sealer),
      });

    it('takes nothing from somebody outside, or in a colleague’s name, or copied to another place', async () => {
      const [ab, kn] = await two();
      await change(kn, () => kept);
      const forger = await newKeyPair();
      await put(factsFor([ab, kn]), forged, forger);
      await put(factsFor([ab, kn]), forged, { identity: forger.identity, recipient: ab.key.recipient });
      const sealed = await sealShared(factsFor([ab, kn]), forged, ab.key);
      await putOn(server, { _id: crypto.randomUUID(), sealed });
      await putOn(server, { _id: crypto.randomUUID(), sealed: 'x'.repeat(50_000) });
      await kn.exchange(server);
      expect(await libraryOf(kn)).toEqual(kept);
      expect(reasonsOf(kn)).toEqual(['forged', 'garbage', 'no-member', 'other-place']);
    });

    it('takes nothing that is no valid library, deletes it, or names a patient or another id', async () => {
      const [ab, kn] = await two();
      await change(kn, () => kept);
      const patientId = crypto.randomUUID();
      const deep = { toJSON: () => JSON.parse(`${'['.repeat(500)}${']'.repeat(500)}`) as unknown };
      const template = { ...words(3, 9, ''), name: 'Knee', draft: { deep } };
      const { text, ...rest } = template;
      const bad: [Partial<SharedFacts>, object | null][] = [
        [{}, { ...forged, version: 9 }],
        [{}, { ...forged, texts: [words(1, 9, 'Forged.'), words(1, 9, 'Forged.')] }],
        [{}, { ...forged, texts: [{ ...words(1, 9, 'Forged.'), at: 'tomorrow' }] }],
        [{}, { ...forged, templates: [{ ...rest, draft: { items: [{ kind: 'other' }] } }] }],
        [{}, { ...forged, extra: 1 }],
        [{}, { ...forged, templates: [rest] }],
        [{}, null],
        [{ patientId }, forged],
        [{ id: 'another' }, forged],
        [{ kind: 'plan', patientId: null }, forged],
      ];
      for (const [facts, document] of bad) await put(factsFor([ab, kn], facts), document, ab.key);
      await kn.exchange(server);
      expect(await libraryOf(kn)).toEqual(kept);
      expect(reasonsOf(kn)).toEqual(bad.map(() => 'invalid'));
    });

    it('takes no more than one can hold', async () => {
      const [ab, kn] = await two();
      const { text, ...rest } = words(3, 9, '');
      const huge = {
        ...emptyLibrary,
        templates: [{ ...rest, name: 'Huge', draft: { note: 'x'.repeat(1_400_000) } }],
      };
      await put(factsFor([ab, kn]), huge, ab.key);
      await kn.exchange(server);
      expect(await libraryOf(kn)).toEqual(emptyLibrary);
      expect(reasonsOf(kn)).toEqual(['library-full']);
    });

    it('is not set back by an old version that is served as a new one, or deleted by the server', async () => {
      const [ab, kn] = await two();
      await keep(ab, words(1, 1, 'Old.'));
      await rounds([ab, kn]);
      const [old] = await documentsOn(server);
      await keep(ab, words(1, 2, 'New.'));
      await rounds([ab, kn]);
      const [latest] = await documentsOn(server);
      await putOn(server, { _id: old!.id, _rev: latest!.rev, sealed: old!.sealed });
      await rounds([kn, ab, kn], 1);
      for (const one of [ab, kn]) expect(await saidBy(one)).toEqual(['New.']);
      const [now] = await documentsOn(server);
      await putOn(server, { _id: now!.id, _rev: now!.rev, _deleted: true });
      await rounds([kn, ab, kn], 1);
      for (const one of [ab, kn]) expect(await saidBy(one)).toEqual(['New.']);
    });
  });
});
