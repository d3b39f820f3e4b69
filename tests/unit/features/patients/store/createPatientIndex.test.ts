import { describe, expect, it } from 'vitest';
import { usualSureness } from '#core/chance/grade';
import { createPatientIndex } from '#features/patients/store/createPatientIndex';
import { createPatients } from '#features/patients/store/createPatients';
import { createTestDevice } from '../../../../support/openTestRepository';
import { smallRecording } from '../../../../support/smallRecording';
import { smallSession } from '../../../../support/smallSession';
import { testLog } from '../../../../support/testLog';

const recording = smallRecording();
const session = { ...smallSession(), planId: null, sets: smallSession().sets.slice(0, 1) };
const idOf = (digit: number) => `${digit}b0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d1${digit}`;

async function opened() {
  const repository = await createTestDevice().open();
  let ids = 0;
  const world = {
    openRepository: () => Promise.resolve({ repository, problem: null }),
    sureness: () => usualSureness,
    newId: () => idOf(++ids),
    now: () => new Date('2026-04-10T08:00:00.000Z'),
    saveFile: () => undefined,
    fetchExample: () => Promise.reject(new Error('no example')),
    pause: () => Promise.resolve(),
  };
  const keep = async (digit: number, patient: string, day = digit) => {
    const sets = session.sets.map((set) => ({ ...set, sessionId: idOf(digit) }));
    const startedAt = `2026-04-0${day}T06:07:08.000Z`;
    const kept = { ...session, id: `${idOf(digit).slice(0, -1)}f`, startedAt, endedAt: null, patient, sets };
    await repository.keepTogether(kept, [
      { recording: { ...recording, id: idOf(digit) }, visitId: kept.id, fromVideo: 'done', video: null },
    ]);
    return kept;
  };
  const index = createPatientIndex(world);
  return { repository, keep, index, world };
}

describe('createPatientIndex(world)', () => {
  it('makes a record for everybody who has a session, and works out what the list shows', async () => {
    const { index, keep } = await opened();
    await keep(1, 'Blue Heron 7');
    await keep(2, 'Blue Heron 7');
    await keep(3, 'Grey Otter 3');
    await keep(4, '');
    expect(await index.refresh()).toBe(true);
    const { patients, overviews } = await index.list();
    const listed = patients.map(({ id, pseudonym }) => [pseudonym, overviews.get(id)?.sessions.length]);
    expect(listed.sort()).toEqual([
      ['Blue Heron 7', 2],
      ['Grey Otter 3', 1],
    ]);
    expect(await index.refresh()).toBe(false);
  });

  it('makes one record of each patient where several ask at once, in another tab too', async () => {
    const { index, keep, world } = await opened();
    await keep(1, 'Blue Heron 7');
    await keep(3, 'Grey Otter 3');
    const otherTab = createPatientIndex(world);
    await Promise.all([
      index.refresh(),
      index.sessionsOf('Grey Otter 3'),
      index.refresh(),
      otherTab.refresh(),
      otherTab.sessionsOf('Blue Heron 7'),
    ]);
    const { patients, overviews } = await index.list();
    expect(patients.map(({ pseudonym }) => pseudonym).sort()).toEqual(['Blue Heron 7', 'Grey Otter 3']);
    for (const { id } of patients) expect(overviews.get(id)?.sessions).toHaveLength(1);
  });

  it('shows at once what was opened again in the record, and settled again in the session', async () => {
    const { index, keep, repository } = await opened();
    const kept = await keep(1, 'Blue Heron 7');
    const settled = (at: string) => ({ visitId: kept.id, by: 'therapist' as const, who: 'AB', at });
    const first = settled('2026-04-10T08:00:00.000Z');
    const gaveWay = { ...kept, endedBecause: { reason: 'gave-way' as const, fell: null } };
    await repository.sessions.save({ ...gaveWay, settles: [first] });
    await index.refresh();
    const isOpen = async () => {
      const { patients, overviews } = await index.list();
      const [inCourse] = await index.sessionsOf('Blue Heron 7');
      const [known] = (await index.knownSessionsOf(patients[0]!.id))!;
      return [overviews.get(patients[0]!.id)!.sessions[0]!.isOpen, inCourse!.isOpen, known!.isOpen];
    };
    expect(await isOpen()).toEqual([false, false, false]);
    await testLog(repository).add('Blue Heron 7', { what: 'review-withdrawn', about: kept.id }); // On the 12th.
    expect(await isOpen()).toEqual([true, true, true]);
    await repository.sessions.save({ ...gaveWay, settles: [first, settled('2026-04-13T08:00:00.000Z')] });
    await index.refresh();
    expect(await isOpen()).toEqual([false, false, false]);
  });

  it('reads only the patient whose session arrives', async () => {
    const { index, keep } = await opened();
    await keep(1, 'Blue Heron 7');
    await keep(3, 'Grey Otter 3');
    await index.refresh();
    const kept = await keep(2, 'Grey Otter 3');
    const totals: number[] = [];
    await index.refresh((_, total) => totals.push(total));
    expect(totals).toEqual([1]);
    const sessions = await index.sessionsOf('Grey Otter 3');
    expect(sessions.map(({ id }) => id)).toContain(kept.id);
    expect(sessions[0]!.sets[0]!.reading).toMatchObject({
      state: 'read',
      course: { limits: recording.limits },
    });
  });

  it('reads as much for each patient, however many others changed', async () => {
    const { repository, index, keep } = await opened();
    const patients = 8;
    for (let digit = 1; digit <= patients; digit++) await keep(digit, `Invented Heron ${digit}`);
    const { facts } = repository.recordings;
    let asked = 0;
    repository.recordings.facts = (ids) => {
      asked += ids.length;
      return facts(ids);
    };
    await index.refresh();
    // Once to see whose it is, and once for its patient; never for the others.
    expect(asked).toBe(2 * patients);
  });

  it('takes each mark away once, and asks for none that is gone', async () => {
    const { repository, index, keep } = await opened();
    await keep(1, 'Blue Heron 7');
    await keep(3, 'Grey Otter 3');
    await keep(4, '');
    const { save } = repository.digests;
    const settled: string[] = [];
    repository.digests.save = (digests, changed, emptied) => {
      settled.push(...changed.map(({ kind, id }) => `${kind} ${id}`));
      return save(digests, changed, emptied);
    };
    await index.refresh();
    expect(new Set(settled).size).toBe(6); // A session and a recording each.
    expect(settled).toHaveLength(6);
    expect(await repository.digests.changed()).toEqual([]);
  });

  it('opens a patient without reading all the others, while nothing has changed', async () => {
    const { repository, index, keep } = await opened();
    await keep(1, 'Blue Heron 7');
    await keep(3, 'Grey Otter 3');
    await index.refresh();
    const { list } = repository.patients;
    let lists = 0;
    repository.patients.list = () => {
      lists++;
      return list();
    };
    expect(await index.sessionsOf('Grey Otter 3')).toHaveLength(1);
    expect(lists).toBe(0);
    await keep(2, 'Grey Otter 3');
    expect(await index.sessionsOf('Grey Otter 3')).toHaveLength(2);
  });

  it('shows a review, a deleted session and a deleted patient at once', async () => {
    const { repository, index, keep } = await opened();
    const first = await keep(1, 'Blue Heron 7');
    await keep(2, 'Blue Heron 7');
    await index.refresh();
    const { recording: head, edition } = (await repository.recordings.findHead(idOf(1)))!;
    const reviewed = { by: 'T1', at: recording.createdAt };
    await repository.recordings.update(
      { ...head, review: { limitsSet: [], remarks: [], cues: [], reviewed } },
      edition,
    );
    const before = await index.sessionsOf('Blue Heron 7');
    expect(before.find(({ id }) => id === first.id)!.sets[0]!.reading).toMatchObject({ isReviewed: true });
    await repository.sessions.remove(first.id);
    expect(await index.sessionsOf('Blue Heron 7')).toHaveLength(1);
    await index.refresh(); // The deleted one could have been anybody's.
    const { patients, overviews } = await index.list();
    expect(overviews.get(patients[0]!.id)!.sessions).toHaveLength(1);
    await repository.patients.remove(patients[0]!.id);
    expect((await index.list()).overviews.size).toBe(0);
  });

  it('works out everything anew where it has to be surer', async () => {
    const { index, keep, world } = await opened();
    await keep(1, 'Blue Heron 7');
    await index.refresh();
    const surer = createPatientIndex({ ...world, sureness: () => 0.95 });
    expect(await surer.refresh()).toBe(true);
    expect(await surer.refresh()).toBe(false);
  });
});

describe('createPatients(world)', () => {
  it('has the practice’s stages on a patient’s page, and those that arrive while it is open', async () => {
    const { repository, index, world } = await opened();
    const log = testLog(repository);
    const patients = createPatients({ ...world, index, log, writePlan: () => Promise.resolve() });
    const id = (await patients.add('Blue Heron 7'))!;
    await patients.open(id);
    expect(patients.store.getState().stages).toEqual({});
    const stages = [{ id: 'short', words: 'Ten seconds.', holds: { count: 3, seconds: 10 } }];
    await repository.library.change((library) => ({
      ...library,
      stages: [{ exercise: 'wall-sit-hold', at: '2026-04-10T08:00:00.000Z', by: 'KN', stages }],
    }));
    await expect.poll(() => patients.store.getState().stages).toEqual({ 'wall-sit-hold': stages });
    // Those that can't be read leave the page as it is, with the program's.
    await repository.notes.write('library', '{');
    await expect.poll(() => patients.store.getState().stages).toEqual({});
    expect(patients.store.getState()).toMatchObject({ problem: null, patient: { id } });
  });

  it('marks sessions and keeps notes; the list follows', async () => {
    const { repository, index, keep, world } = await opened();
    const log = testLog(repository);
    const kept = await keep(1, 'Blue Heron 7');
    const patients = createPatients({ ...world, index, log, writePlan: () => Promise.resolve() });
    await patients.enter();
    const [row] = patients.store.getState().rows!;
    expect(row).toMatchObject({ pseudonym: 'Blue Heron 7', counts: { new: 1 } });
    patients.leave();
    await patients.open(row!.id);
    await patients.mark(kept.id, 'viewed');
    const notes = {
      painfulSide: null,
      since: null,
      onset: null,
      surgery: null,
      sites: [],
      painRule: null,
      restrictions: '',
    };
    await patients.saveNotes({ ...notes, goals: 'Stairs.' });
    expect(patients.store.getState().patient).toMatchObject({
      goals: 'Stairs.',
      changedAt: '2026-04-10T08:00:00.000Z',
    });
    await patients.enter();
    expect(patients.store.getState().rows![0]).toMatchObject({ counts: { new: 0, viewed: 1 } });
    // It is signed that nothing is left to do, once, and not that somebody looked.
    await patients.open(row!.id);
    await patients.mark(kept.id, 'settled');
    await patients.mark(kept.id, 'settled');
    expect(patients.store.getState().log.entries).toMatchObject([
      { entry: { what: 'session-settled', about: kept.id, by: 'AB' } },
    ]);
    expect(await patients.add(' Blue  Heron 7')).toBe(row!.id);
    expect(await patients.add('Red Lynx 12')).not.toBe(row!.id);
    await patients.open(idOf(9));
    expect(patients.store.getState()).toMatchObject({ patient: null, isMissing: true });
  });
});
