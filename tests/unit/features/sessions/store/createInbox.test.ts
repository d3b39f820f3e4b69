import { describe, expect, it, vi } from 'vitest';
import { createApp } from '#features/review/store/createApp';
import { createInbox } from '#features/sessions/store/createInbox';
import { undoMs, type RemovalNote } from '#features/sessions/store/removals';
import { findNeeds } from '#features/sessions/rules/findNeeds';
import type { SessionDocument } from '#documents/recording/sessionDocument';
import type { VisitDocument } from '#documents/session/visitDocument';
import type { Repository } from '#device/storage/repository';
import { storageProblem, type StorageProblem } from '#device/storage/storageProblem';
import { createTestDevice } from '../../../../support/openTestRepository';
import { smallPlan } from '../../../../support/smallPlan';
import { smallSession } from '../../../../support/smallSession';
import { createMarks } from '#device/storage/marks';
import { tableNames } from '#device/storage/records';
import { smallSetStart } from '../../../../support/smallSet';
import { smallVisit } from '../../../../support/smallVisit';
import { fakeAdapters } from '../../../../support/fakeAdapters';

const session = smallSession();
const visit = smallVisit();
const idOf = (digit: number) => `${digit}b0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d11`;
const inVisit = { visitId: visit.id, video: `${session.id}.webm`, fromVideo: 'done' } as const;

/** A device with a visit, its session and its video. */
async function deviceWithVisit() {
  const device = createTestDevice();
  const repository = await device.open();
  await repository.sessions.save(session, inVisit);
  await repository.visits.save(visit);
  await (await device.videos.create(inVisit.video)).write(new Blob(['pictures']));
  return { device, repository };
}

function openInbox(
  repository: Repository,
  parts: { problem?: StorageProblem; notes?: RemovalNote[]; nowMs?: number } = {},
) {
  const world = { nowMs: parts.nowMs ?? 5000, notes: parts.notes ?? [], asked: 0 };
  const forgotten: string[] = [];
  const timers: { ms: number; call: () => void }[] = [];
  const { adapters } = fakeAdapters();
  let ticks = 0;
  /** No two moments are the same. */
  const now = () => new Date(adapters.now().getTime() + 1000 * ticks++);
  const app = createApp({ ...adapters, now });
  const inbox = createInbox({
    openRepository: () => Promise.resolve({ repository, problem: parts.problem ?? null }),
    notes: { read: () => world.notes, write: (notes) => (world.notes = [...notes]) },
    nowMs: () => world.nowMs,
    later(ms, call) {
      const timer = { ms, call };
      timers.push(timer);
      return () => void timers.splice(timers.indexOf(timer) >>> 0, 1);
    },
    measureWaiting: () => world.asked++,
    forgetRest: () => undefined,
    forgetPatient: (patient) => forgotten.push(patient),
    app,
  });
  const state = inbox.store.getState;
  /** Lets the time pass that a timer waits for. */
  const ring = (ms: number) => {
    const due = timers.filter((timer) => timer.ms === ms);
    due.forEach((timer) => timers.splice(timers.indexOf(timer), 1));
    due.forEach(({ call }) => call());
  };
  return { inbox, app, world, timers, state, ring, forgotten };
}

describe('enter()', () => {
  it('lists visits and reads their sets', async () => {
    const { repository } = await deviceWithVisit();
    const { inbox, state } = openInbox(repository);
    expect(state()).toMatchObject({ visits: null, storage: { state: 'opening' } });
    await inbox.enter();
    expect(state().storage).toEqual({ state: 'lasting' });
    expect(state().visits).toHaveLength(1);
    const [listed] = state().visits!;
    expect(listed).toMatchObject({ kind: 'visit', patient: 'invented-heron', painAfter: 2 });
    const [first, hold] = listed!.sets;
    expect(hold?.reading).toEqual({ state: 'none' });
    expect(first?.reading).toMatchObject({ state: 'read', hasVideo: true, isWaiting: false });
    const complete = session.derived.repetitions.filter(({ completeness }) => completeness === 'complete');
    expect(first?.reading).toMatchObject({
      result: { marks: complete.map(({ number, judgement: { verdict } }) => ({ number, verdict })) },
    });
  });

  it('shows visits before their sets are read', async () => {
    const { repository } = await deviceWithVisit();
    const { inbox, state } = openInbox(repository);
    const states: (string | undefined)[] = [];
    inbox.store.subscribe(({ visits }) => states.push(visits?.[0]?.sets[0]?.reading.state));
    await inbox.enter();
    expect(states.indexOf('reading')).toBeLessThan(states.indexOf('read'));
    expect(states).toContain('reading');
    expect(state().problem).toBeNull();
  });

  it('takes pain limit and number of sets from the plan that the visit followed', async () => {
    const { repository } = await deviceWithVisit();
    const plan = { ...smallPlan(), id: visit.planId!, painLimit: 1 };
    await repository.plans.save(plan.id, JSON.stringify(plan));
    const { inbox, state } = openInbox(repository);
    await inbox.enter();
    const [listed] = state().visits!;
    expect(listed?.painLimit).toBe(1);
    expect(listed?.plannedSets).toBe(
      plan.items.reduce((sum, { sets, sides }) => sum + sets * sides.length, 0),
    );
    expect(findNeeds(listed!).map(({ kind }) => kind)).toContain('pain-above-limit');
  });

  it('knows no limit where the plan is no longer kept, and the usual one without a plan', async () => {
    const { repository } = await deviceWithVisit();
    const free: VisitDocument = { ...visit, id: idOf(4), planId: null, sets: [] };
    await repository.visits.save(free);
    const { inbox, state } = openInbox(repository);
    await inbox.enter();
    const limits = new Map(state().visits!.map(({ id, painLimit }) => [id, painLimit]));
    expect(limits.get(visit.id)).toBeNull();
    expect(limits.get(free.id)).toBe(2);
  });

  it('leaves no session out: those of no visit stand alone, those that a visit lost are added to it', async () => {
    const { repository } = await deviceWithVisit();
    const alone: SessionDocument = { ...session, id: idOf(1) };
    const lost: SessionDocument = { ...session, id: idOf(2) };
    await repository.sessions.save(alone, { visitId: null, video: null, fromVideo: 'impossible' });
    await repository.sessions.save(lost, { ...inVisit, video: null });
    const { inbox, state } = openInbox(repository);
    await inbox.enter();
    const ids = state().visits!.map(({ kind, sets }) => [kind, sets.map(({ line }) => line.sessionId)]);
    expect(ids).toEqual([
      ['visit', [session.id, null, lost.id]],
      ['recording', [alone.id]],
    ]);
  });

  it('tells of a session that is gone, and reads the others', async () => {
    const { repository } = await deviceWithVisit();
    const gone = { ...visit.sets[0]!, sessionId: idOf(3) };
    await repository.visits.save({ ...visit, sets: [gone, visit.sets[0]!] });
    const { inbox, state } = openInbox(repository);
    await inbox.enter();
    const readings = state().visits![0]!.sets.map(({ reading }) => reading);
    expect(readings[0]).toMatchObject({
      state: 'unreadable',
      sentence: expect.stringMatching(/no longer kept/),
    });
    expect(readings[1]).toMatchObject({ state: 'read' });
  });

  it('measures anew what an older version measured', async () => {
    const { repository } = await deviceWithVisit();
    const derived = { ...session.derived, measuringVersion: 1, repetitions: [] };
    await repository.sessions.save({ ...session, derived }, inVisit);
    const { inbox, state } = openInbox(repository);
    await inbox.enter();
    const reading = state().visits![0]!.sets[0]!.reading;
    expect(reading.state === 'read' && reading.result.marks.length).toBeGreaterThan(0);
  });

  it('looks again while a set waits to be measured from its video', async () => {
    const { repository } = await deviceWithVisit();
    await repository.sessions.setFromVideo(session.id, 'waiting');
    const { inbox, state, timers, ring, world } = openInbox(repository);
    await inbox.enter();
    expect(state().visits![0]!.sets[0]!.reading).toMatchObject({ isWaiting: true });
    await repository.sessions.replaceFromVideo(session);
    ring(timers[0]!.ms);
    await vi.waitFor(() => expect(state().visits![0]!.sets[0]!.reading).toMatchObject({ isWaiting: false }));
    expect(timers).toEqual([]);
    expect(world.asked).toBe(1);
  });

  it('says why nothing lasts, and goes on', async () => {
    const { repository } = await deviceWithVisit();
    const { inbox, state } = openInbox(repository, { problem: storageProblem('refused') });
    await inbox.enter();
    expect(state().storage).toMatchObject({
      state: 'memory',
      sentence: expect.stringMatching(/Allow site data/),
    });
    expect(state().visits).toHaveLength(1);
  });

  it('says why storage can’t be opened', async () => {
    const inbox = createInbox({
      openRepository: () => Promise.reject(storageProblem('other-tab')),
      notes: { read: () => [], write: () => undefined },
      nowMs: () => 0,
      later: () => () => undefined,
      measureWaiting: () => undefined,
      forgetRest: () => undefined,
      forgetPatient: () => undefined,
      app: createApp(fakeAdapters().adapters),
    });
    await inbox.enter();
    expect(inbox.store.getState()).toMatchObject({
      visits: null,
      storage: { state: 'blocked', sentence: expect.stringMatching(/Another tab/) },
    });
  });
});

describe('openSet(sessionId, title)', () => {
  it('opens the review with the video, from where it leads back', async () => {
    const { repository } = await deviceWithVisit();
    const { inbox, app, state } = openInbox(repository);
    app.show('inbox');
    await inbox.enter();
    await inbox.openSet(session.id, 'Heron, set 1');
    expect(app.store.getState()).toMatchObject({ screen: 'review', backTo: 'inbox' });
    expect(app.recording()).toMatchObject({ fileName: 'Heron, set 1', note: 'An invented person.' });
    expect(await app.recording()?.video?.text()).toBe('pictures');
    expect(state()).toMatchObject({ opening: null, problem: null });
    app.show('inbox');
    expect(app.store.getState()).toMatchObject({ screen: 'inbox', backTo: 'start' });
  });

  it('judges with limits that were set for the same patient, task and side, in the list as in the review', async () => {
    const { repository } = await deviceWithVisit();
    const next: SessionDocument = { ...session, id: idOf(1) };
    const line = { ...visit.sets[0]!, sessionId: next.id };
    const later = {
      ...visit,
      id: idOf(2),
      startedAt: '2026-04-08T06:00:00.000Z',
      endedAt: null,
      sets: [line],
    };
    await repository.sessions.save(next, { ...inVisit, visitId: later.id, video: null });
    await repository.visits.save(later);
    const { inbox, app, state } = openInbox(repository);
    const reviewed = async (id: string, deg: number) => {
      app.show('inbox');
      await inbox.enter();
      await inbox.openSet(id, 'a set');
      app.moveLimits({ kneeInwardDeg: deg, kneeOutwardDeg: deg });
      app.endLimitMove();
      await vi.waitFor(() => expect(app.store.getState().keeping).toEqual({ state: 'kept' }));
      app.show('inbox');
      await inbox.enter();
    };
    const verdicts = () => {
      const { reading } = state().visits![0]!.sets[0]!;
      return reading.state === 'read' ? reading.result.marks.map(({ verdict }) => verdict) : [];
    };
    await inbox.enter();
    expect(verdicts()).toEqual(['out-of-line', 'in-line']);
    await reviewed(session.id, 30);
    expect(verdicts()).toEqual(['in-line', 'in-line']);
    await inbox.openSet(next.id, 'the next');
    expect(app.store.getState()).toMatchObject({
      limits: { present: { kneeInwardDeg: 30, kneeOutwardDeg: 30 } },
      review: { limitsSet: [{ by: 'T1', takenFrom: visit.startedAt }] },
    });
    app.markReviewed(true);
    await vi.waitFor(() => expect(app.store.getState().keeping).toEqual({ state: 'kept' }));
    await reviewed(session.id, 1);
    expect(verdicts()).toEqual(['in-line', 'in-line']);
  });

  it('tells where the session is gone, and stays', async () => {
    const { repository } = await deviceWithVisit();
    const { inbox, app, state } = openInbox(repository);
    app.show('inbox');
    await inbox.enter();
    await repository.sessions.remove(session.id);
    await inbox.openSet(session.id, 'Heron, set 1');
    expect(state().problem?.sentence).toMatch(/no longer kept/);
    expect(app.store.getState().screen).toBe('inbox');
  });

  it('does not open what was left meanwhile', async () => {
    const { repository } = await deviceWithVisit();
    const { inbox, app } = openInbox(repository);
    await inbox.enter();
    const opening = inbox.openSet(session.id, 'Heron, set 1');
    inbox.leave();
    await opening;
    expect(app.store.getState().screen).toBe('start');
  });
});

describe('remove(which)', () => {
  const which = { id: visit.id, kind: 'visit' } as const;

  it('deletes the visit with session and video, once it can no longer be taken back', async () => {
    const { repository } = await deviceWithVisit();
    const { inbox, state, ring, world } = openInbox(repository);
    await inbox.enter();
    inbox.remove(which);
    const dueMs = 5000 + undoMs;
    expect(state().removals).toEqual([{ id: visit.id, patient: null, records: [which], dueMs }]);
    expect(world.notes).toEqual([{ ...which, dueMs }]);
    expect(await repository.visits.find(visit.id)).not.toBeNull();
    ring(undoMs);
    await vi.waitFor(() => expect(state().removals).toEqual([]));
    expect(await repository.visits.find(visit.id)).toBeNull();
    expect(await repository.sessions.find(session.id)).toBeNull();
    expect(await repository.videos.list()).toEqual([]);
    expect(state()).toMatchObject({ removals: [], visits: [] });
    expect(world.notes).toEqual([]);
  });

  it('deletes nothing where it is taken back', async () => {
    const { repository } = await deviceWithVisit();
    const { inbox, state, world, timers } = openInbox(repository);
    await inbox.enter();
    inbox.remove(which);
    inbox.undoRemove(visit.id);
    expect(timers).toEqual([]);
    expect(await repository.visits.find(visit.id)).not.toBeNull();
    expect(state().removals).toEqual([]);
    expect(world.notes).toEqual([]);
  });

  it('tells where it can’t be deleted, and shows it again', async () => {
    const { repository } = await deviceWithVisit();
    const stuck = {
      ...repository,
      visits: { ...repository.visits, remove: () => Promise.reject(new Error('stuck')) },
    };
    const { inbox, state, ring } = openInbox(stuck);
    await inbox.enter();
    inbox.remove(which);
    ring(undoMs);
    await vi.waitFor(() => expect(state().problem).not.toBeNull());
    expect(state().problem?.title).toBe('This could not be deleted');
    await vi.waitFor(() => expect(state().removals).toEqual([]));
    expect(state().visits).toMatchObject([{ id: visit.id }]);
  });

  it('deletes what an earlier opening of the page did not come to', async () => {
    const { repository } = await deviceWithVisit();
    const { inbox, state, world } = openInbox(repository, { notes: [{ ...which, dueMs: 4999 }] });
    await inbox.enter();
    expect(state().visits).toEqual([]);
    expect(world.notes).toEqual([]);
  });

  it('leaves alone what another tab can still take back', async () => {
    const { repository } = await deviceWithVisit();
    const notes = [{ ...which, dueMs: 5001 }];
    const { inbox, state, world } = openInbox(repository, { notes });
    await inbox.enter();
    expect(state().visits).toHaveLength(1);
    expect(world.notes).toEqual(notes);
  });
});

describe('removePatient(patient)', () => {
  const other = { ...visit, id: '9a7b0c3c-6d2e-4c57-9a5b-0f6f1f0e9d10', patient: 'Grey Otter 3' };
  const others = { ...session, id: '9a7b0c3c-6d2e-4c57-9a5b-0f6f1f0e9d11' };

  /** A device with two patients; the first has a plan, a draft, the last plan and a set that was broken off. */
  async function twoPatients() {
    const { device, repository } = await deviceWithVisit();
    await repository.visits.save({ ...other, sets: [{ ...visit.sets[0]!, sessionId: others.id }] });
    await repository.sessions.save(others, { visitId: other.id, video: null, fromVideo: 'impossible' });
    await repository.plans.save('one', JSON.stringify({ patient: visit.patient }));
    await repository.plans.save('other', JSON.stringify({ patient: other.patient }));
    await repository.notes.write('draft', JSON.stringify({ patient: visit.patient, items: 'half' }));
    await repository.notes.write('last-plan', JSON.stringify({ patient: visit.patient }));
    await repository.notes.write('keys', '[]');
    // Broken off in a tab that is gone: this one does not hold its mark.
    const gone = await device.open({ marks: createMarks(undefined) });
    const broken = { ...smallSetStart(), id: '9a7b0c3c-6d2e-4c57-9a5b-0f6f1f0e9d12', visitId: visit.id };
    const set = await gone.beginSet(broken, () => undefined);
    await set.video!.write(new Blob(['half a film']));
    return { device, repository };
  }

  it('deletes all of one patient, so that nothing stays, and nothing of another', async () => {
    const { device, repository } = await twoPatients();
    const { inbox, state, ring, world, forgotten } = openInbox(repository);
    await inbox.enter();
    expect((await repository.interrupted()).found).toHaveLength(1);
    await inbox.removePatient(visit.patient);
    expect(state().removals).toMatchObject([{ patient: visit.patient, records: { length: 5 } }]);
    expect(JSON.stringify(world.notes)).not.toContain(visit.patient);
    ring(undoMs);
    await vi.waitFor(() => expect(state().removals).toEqual([]));
    expect(forgotten).toEqual([visit.patient]);
    expect(state().visits!.map(({ patient }) => patient)).toEqual([other.patient]);

    const records = await device.openRecords();
    const left: unknown[] = [];
    for (const table of tableNames) left.push(...(await records.list(table)));
    expect(JSON.stringify(left)).not.toContain(visit.patient);
    expect(JSON.stringify(left)).not.toContain(session.id);
    for (const table of ['visits', 'sessions', 'facts', 'plans', 'notes'] as const)
      expect(await records.keys(table), table).toHaveLength(1);
    expect((await records.keys('rows')).every((key) => key.includes(others.id))).toBe(true);
    for (const table of ['sets', 'tracking'] as const) expect(await records.keys(table)).toEqual([]);
    expect(await device.videos.list()).toEqual([]);
  });

  it('is taken back as a whole', async () => {
    const { repository } = await twoPatients();
    const { inbox, state, world, ring, forgotten } = openInbox(repository);
    await inbox.enter();
    await inbox.removePatient(visit.patient);
    inbox.undoRemove(state().removals[0]!.id);
    ring(undoMs);
    expect(world.notes).toEqual([]);
    expect(forgotten).toEqual([]);
    expect(await repository.visits.find(visit.id)).not.toBeNull();
  });
});
