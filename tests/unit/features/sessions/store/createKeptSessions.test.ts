import { describe, expect, it, vi } from 'vitest';
import { usualSureness, type Sureness } from '#core/chance/grade';
import { createMarks } from '#device/storage/marks';
import { tableNames } from '#device/storage/records';
import type { Repository } from '#device/storage/repository';
import { storageProblem, type StorageProblem } from '#device/storage/storageProblem';
import { newPatient } from '#documents/patient/newPatient';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { recordingHead } from '#documents/recording/recordingHead';
import type { SessionDocument } from '#documents/session/sessionDocument';
import { createReview } from '#features/review/store/createReview';
import { findNeeds } from '#features/sessions/rules/findNeeds';
import { createKeptSessions } from '#features/sessions/store/createKeptSessions';
import { undoMs, type RemovalNote } from '#features/sessions/store/removals';
import { fakeAdapters } from '../../../../support/fakeAdapters';
import { createTestDevice } from '../../../../support/openTestRepository';
import { smallPlan } from '../../../../support/smallPlan';
import { smallRecording } from '../../../../support/smallRecording';
import { smallSession } from '../../../../support/smallSession';
import { smallSetStart } from '../../../../support/smallSet';
import { testLog } from '../../../../support/testLog';

const recording = smallRecording();
const session = smallSession();
const idOf = (digit: number) => `${digit}b0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d11`;
const inSession = { visitId: session.id, video: `${recording.id}.webm`, fromVideo: 'done' } as const;

/** A device with a visit, its session and its video. */
async function deviceWithSession() {
  const device = createTestDevice();
  const repository = await device.open();
  await repository.recordings.save(recording, inSession);
  await repository.sessions.save(session);
  await (await device.videos.create(inSession.video)).write(new Blob(['pictures']));
  return { device, repository };
}

function openSessionsScreen(
  repository: Repository,
  parts: { problem?: StorageProblem; notes?: RemovalNote[]; nowMs?: number } = {},
) {
  const world = { nowMs: parts.nowMs ?? 5000, notes: parts.notes ?? [], sureness: usualSureness as Sureness };
  const deleted: string[] = [];
  repository.subscribe((change) => {
    if (change.kind === 'patient-deleted') deleted.push(change.patient);
  });
  const timers: { ms: number; call: () => void }[] = [];
  const { adapters, navigation } = fakeAdapters();
  let ticks = 0;
  /** No two moments are the same. */
  const now = () => new Date(adapters.now().getTime() + 1000 * ticks++);
  const review = createReview({ ...adapters, now });
  const keptSessions = createKeptSessions({
    openRepository: () => Promise.resolve({ repository, problem: parts.problem ?? null }),
    notes: { read: () => world.notes, write: (notes) => (world.notes = [...notes]) },
    nowMs: () => world.nowMs,
    later(ms, call) {
      const timer = { ms, call };
      timers.push(timer);
      return () => void timers.splice(timers.indexOf(timer) >>> 0, 1);
    },
    forgetRest: () => undefined,
    review,
    log: testLog(repository),
    sureness: () => world.sureness,
    sessionsOf: () => Promise.resolve([]),
  });
  const state = keptSessions.store.getState;
  /** Lets the time pass that a timer waits for. */
  const ring = (ms: number) => {
    const due = timers.filter((timer) => timer.ms === ms);
    due.forEach((timer) => timers.splice(timers.indexOf(timer), 1));
    due.forEach(({ call }) => call());
  };
  return { keptSessions, review, navigation, world, timers, state, ring, deleted };
}

describe('enter()', () => {
  it('lists sessions and reads their sets', async () => {
    const { repository } = await deviceWithSession();
    const { keptSessions, state } = openSessionsScreen(repository);
    expect(state()).toMatchObject({ sessions: null, storage: { state: 'opening' } });
    await keptSessions.enter();
    expect(state().storage).toEqual({ state: 'lasting' });
    expect(state().sessions).toHaveLength(1);
    const [listed] = state().sessions!;
    expect(listed).toMatchObject({ kind: 'visit', patient: 'invented-heron', painAfter: 2 });
    const [first, hold] = listed!.sets;
    expect(hold?.reading).toEqual({ state: 'none' });
    expect(first?.reading).toMatchObject({ state: 'read', hasVideo: true, isWaiting: false });
    const complete = recording.derived.repetitions.filter(({ completeness }) => completeness === 'complete');
    expect(first?.reading).toMatchObject({
      result: { marks: complete.map(({ number, judgement: { verdict } }) => ({ number, verdict })) },
    });
  });

  it('shows sessions before their sets are read', async () => {
    const { repository } = await deviceWithSession();
    const { keptSessions, state } = openSessionsScreen(repository);
    const states: (string | undefined)[] = [];
    keptSessions.store.subscribe(({ sessions }) => states.push(sessions?.[0]?.sets[0]?.reading.state));
    await keptSessions.enter();
    expect(states.indexOf('reading')).toBeLessThan(states.indexOf('read'));
    expect(states).toContain('reading');
    expect(state().problem).toBeNull();
  });

  it('takes pain limit and number of sets from the plan that the session followed', async () => {
    const { repository } = await deviceWithSession();
    const plan = { ...smallPlan(), id: session.planId!, painLimit: 1 };
    await repository.plans.save(plan.id, JSON.stringify(plan));
    const { keptSessions, state } = openSessionsScreen(repository);
    await keptSessions.enter();
    const [listed] = state().sessions!;
    expect(listed?.painLimit).toBe(1);
    expect(listed?.plannedSets).toBe(
      plan.items.reduce((sum, { sets, sides }) => sum + sets * sides.length, 0),
    );
    expect(findNeeds(listed!).map(({ kind }) => kind)).toContain('pain-above-limit');
  });

  it('knows no limit where the plan is no longer kept, and the usual one without a plan', async () => {
    const { repository } = await deviceWithSession();
    const free: SessionDocument = { ...session, id: idOf(4), planId: null, sets: [] };
    await repository.sessions.save(free);
    const { keptSessions, state } = openSessionsScreen(repository);
    await keptSessions.enter();
    const limits = new Map(state().sessions!.map(({ id, painLimit }) => [id, painLimit]));
    expect(limits.get(session.id)).toBeNull();
    expect(limits.get(free.id)).toBe(2);
  });

  it('leaves no recording out: those of no session are listed alone, those that a session lost are added to it', async () => {
    const { repository } = await deviceWithSession();
    const alone: RecordingDocument = { ...recording, id: idOf(1) };
    const lost: RecordingDocument = { ...recording, id: idOf(2) };
    await repository.recordings.save(alone, { visitId: null, video: null, fromVideo: 'impossible' });
    await repository.recordings.save(lost, { ...inSession, video: null });
    const { keptSessions, state } = openSessionsScreen(repository);
    await keptSessions.enter();
    const ids = state().sessions!.map(({ kind, sets }) => [kind, sets.map(({ line }) => line.sessionId)]);
    expect(ids).toEqual([
      ['visit', [recording.id, null, lost.id]],
      ['recording', [alone.id]],
    ]);
  });

  it('reports a recording that is missing, and reads the others', async () => {
    const { repository } = await deviceWithSession();
    const gone = { ...session.sets[0]!, sessionId: idOf(3) };
    await repository.sessions.save({ ...session, sets: [gone, session.sets[0]!] });
    const { keptSessions, state } = openSessionsScreen(repository);
    await keptSessions.enter();
    const readings = state().sessions![0]!.sets.map(({ reading }) => reading);
    expect(readings[0]).toMatchObject({
      state: 'unreadable',
      sentence: expect.stringMatching(/no longer kept/),
    });
    expect(readings[1]).toMatchObject({ state: 'read' });
  });

  it('measures again what an older version measured', async () => {
    const { repository } = await deviceWithSession();
    const derived = { ...recording.derived, measuringVersion: 1, repetitions: [] };
    await repository.recordings.save({ ...recording, derived }, inSession);
    const { keptSessions, state } = openSessionsScreen(repository);
    await keptSessions.enter();
    const reading = state().sessions![0]!.sets[0]!.reading;
    expect(reading.state === 'read' && reading.result.marks.length).toBeGreaterThan(0);
  });

  it('lists again what is changed while it is shown', async () => {
    const { repository } = await deviceWithSession();
    await repository.recordings.setFromVideo(recording.id, 'waiting');
    const { keptSessions, state } = openSessionsScreen(repository);
    await keptSessions.enter();
    expect(state().sessions![0]!.sets[0]!.reading).toMatchObject({ isWaiting: true });
    const { edition } = (await repository.recordings.findHead(recording.id))!;
    await repository.recordings.replaceFromVideo(recording, edition);
    await vi.waitFor(() =>
      expect(state().sessions![0]!.sets[0]!.reading).toMatchObject({ isWaiting: false }),
    );
    await repository.sessions.remove(session.id);
    await vi.waitFor(() => expect(state().sessions).toEqual([]));
  });

  it('stays as it was once it is left', async () => {
    const { repository } = await deviceWithSession();
    const { keptSessions, state } = openSessionsScreen(repository);
    await keptSessions.enter();
    keptSessions.leave();
    await repository.sessions.remove(session.id);
    expect(state().sessions).toHaveLength(1);
    await keptSessions.enter();
    expect(state().sessions).toEqual([]);
  });

  it('says why nothing is saved, and continues', async () => {
    const { repository } = await deviceWithSession();
    const inMemory = { ...repository, lasting: { records: false, videos: false } };
    const { keptSessions, state } = openSessionsScreen(inMemory, { problem: storageProblem('refused') });
    await keptSessions.enter();
    expect(state().storage).toMatchObject({
      state: 'memory',
      sentence: expect.stringMatching(/Allow site data/),
    });
    expect(state().sessions).toHaveLength(1);
  });

  it('does not say that nothing is saved where only videos are not', async () => {
    const { repository } = await deviceWithSession();
    const noVideos = { ...repository, lasting: { records: true, videos: false } };
    const { keptSessions, state } = openSessionsScreen(noVideos, {
      problem: storageProblem('private-window'),
    });
    await keptSessions.enter();
    expect(state().storage).toMatchObject({
      state: 'no-videos',
      sentence: expect.stringMatching(/private windows/),
    });
  });

  it('says why storage can’t be opened', async () => {
    const keptSessions = createKeptSessions({
      openRepository: () => Promise.reject(storageProblem('other-tab')),
      notes: { read: () => [], write: () => undefined },
      nowMs: () => 0,
      later: () => () => undefined,
      forgetRest: () => undefined,
      review: createReview(fakeAdapters().adapters),
      log: { add: () => Promise.resolve() },
      sureness: () => usualSureness,
      sessionsOf: () => Promise.resolve([]),
    });
    await keptSessions.enter();
    expect(keptSessions.store.getState()).toMatchObject({
      sessions: null,
      storage: { state: 'blocked', sentence: expect.stringMatching(/Another tab/) },
    });
  });
});

describe('lookAtSpace(weeks)', () => {
  it.each([true, false])('reads what is used, and asks the browser to keep it (%s)', async (agrees) => {
    const storage = {
      estimate: () => Promise.resolve({ usage: 300, quota: 1000 }),
      persist: () => Promise.resolve(agrees),
    };
    const { keptSessions } = openSessionsScreen(await createTestDevice().open({ storage }));
    expect(keptSessions.store.getState()).toMatchObject({ space: null, isSafe: null });
    await keptSessions.lookAtSpace(8);
    const space = { usedBytes: 300, freeBytes: 700 };
    expect(keptSessions.store.getState()).toMatchObject({ space, isSafe: agrees });
  });
});

describe('openSet(sessionId, title)', () => {
  it('opens the review with the video, from where it leads back', async () => {
    const { repository } = await deviceWithSession();
    const { keptSessions, review, navigation, state } = openSessionsScreen(repository);
    void navigation.show('sessions');
    await keptSessions.enter();
    await keptSessions.openSet(recording.id, 'Heron, set 1');
    expect(navigation.store.getState()).toMatchObject({ screen: 'review', from: 'sessions' });
    expect(review.store.getState().recording).toMatchObject({
      fileName: 'Heron, set 1',
      note: 'An invented person.',
    });
    expect(await review.store.getState().recording?.video?.text()).toBe('pictures');
    expect(state()).toMatchObject({ opening: null, problem: null });
    navigation.returnTo('sessions');
    expect(navigation.store.getState()).toMatchObject({ screen: 'sessions', from: 'start' });
  });

  it('notes in the patient’s record that a set was reviewed, and no longer is', async () => {
    const { repository } = await deviceWithSession();
    await repository.patients.add(newPatient(session.patient, idOf(6), '2026-04-01T00:00:00.000Z'));
    const { keptSessions, review } = openSessionsScreen(repository);
    await keptSessions.enter();
    await keptSessions.openSet(recording.id, 'Heron, set 1');
    for (const [isReviewed, what] of [
      [true, 'review'],
      [false, 'review-withdrawn'],
    ] as const) {
      review.markReviewed(isReviewed);
      await vi.waitFor(async () => {
        const { log } = (await repository.patients.find(idOf(6)))!;
        expect(log.at(-1)).toMatchObject({ what, about: recording.id, by: 'AB' });
      });
    }
  });

  it('judges with limits that were set for the same patient, task and side, in the list as in the review', async () => {
    const { repository } = await deviceWithSession();
    const next: RecordingDocument = { ...recording, id: idOf(1) };
    const line = { ...session.sets[0]!, sessionId: next.id };
    const later = {
      ...session,
      id: idOf(2),
      startedAt: '2026-04-08T06:00:00.000Z',
      endedAt: null,
      sets: [line],
    };
    await repository.recordings.save(next, { ...inSession, visitId: later.id, video: null });
    await repository.sessions.save(later);
    const { keptSessions, review, navigation, state } = openSessionsScreen(repository);
    const reviewed = async (id: string, deg: number, isForLater = true) => {
      void navigation.show('sessions');
      await keptSessions.enter();
      await keptSessions.openSet(id, 'a set');
      review.moveLimits({ 'knee-angle': { least: -deg, most: deg } });
      review.endLimitMove();
      review.holdForLater(isForLater);
      await vi.waitFor(() => expect(review.store.getState().keeping).toEqual({ state: 'kept' }));
      void navigation.show('sessions');
      await keptSessions.enter();
    };
    const verdicts = () => {
      const { reading } = state().sessions![0]!.sets[0]!;
      return reading.state === 'read' ? reading.result.marks.map(({ verdict }) => verdict) : [];
    };
    await keptSessions.enter();
    expect(verdicts()).toEqual(['out', 'in']);
    // Nobody asked for more than this one set.
    await reviewed(recording.id, 30, false);
    expect(verdicts()).toEqual(['out', 'in']);
    await reviewed(recording.id, 30);
    expect(verdicts()).toEqual(['in', 'in']);
    await keptSessions.openSet(next.id, 'the next');
    expect(review.store.getState()).toMatchObject({
      limits: { 'knee-angle': { least: -30, most: 30 } },
      entries: { limitsSet: [{ by: 'T1', takenFrom: session.startedAt }] },
    });
    review.markReviewed(true);
    await vi.waitFor(() => expect(review.store.getState().keeping).toEqual({ state: 'kept' }));
    await reviewed(recording.id, 1);
    expect(verdicts()).toEqual(['in', 'in']);
  });

  it('reports a missing recording, and stays', async () => {
    const { repository } = await deviceWithSession();
    const { keptSessions, navigation, state } = openSessionsScreen(repository);
    void navigation.show('sessions');
    await keptSessions.enter();
    await repository.recordings.remove(recording.id);
    await keptSessions.openSet(recording.id, 'Heron, set 1');
    expect(state().problem?.sentence).toMatch(/no longer kept/);
    expect(navigation.screen()).toBe('sessions');
  });

  it('does not open what was left meanwhile', async () => {
    const { repository } = await deviceWithSession();
    const { keptSessions, navigation } = openSessionsScreen(repository);
    await keptSessions.enter();
    const opening = keptSessions.openSet(recording.id, 'Heron, set 1');
    keptSessions.leave();
    await opening;
    expect(navigation.screen()).toBe('start');
  });
});

describe('settle(id, who)', () => {
  const gaveWay = { ...session, endedBecause: { reason: 'gave-way', fell: null } as const };

  it('signs what was said of the body, which was open until then', async () => {
    const { repository } = await deviceWithSession();
    await repository.sessions.save(gaveWay);
    await repository.patients.add(newPatient(session.patient, idOf(6), '2026-04-01T00:00:00.000Z'));
    const { keptSessions, state, world } = openSessionsScreen(repository);
    await keptSessions.enter();
    expect(state().sessions).toMatchObject([{ isOpen: true, settlement: null }]);
    await keptSessions.settle(session.id, 'AB');
    const settled = { by: 'therapist', who: 'AB', at: new Date(world.nowMs).toISOString() };
    expect(state()).toMatchObject({ problem: null, sessions: [{ isOpen: false, settlement: settled }] });
    const kept = await repository.sessions.find(session.id);
    expect(kept).toEqual({ ...gaveWay, settles: [{ ...settled, visitId: session.id }] });
    expect((await repository.patients.find(idOf(6)))?.log).toMatchObject([
      { what: 'concern-settled', about: session.id, by: 'AB' },
    ]);
  });

  it('is opened again by a later entry, and settled by a still later one; nothing that was signed goes', async () => {
    const { repository } = await deviceWithSession();
    await repository.sessions.save(gaveWay);
    await repository.patients.add(newPatient(session.patient, idOf(6), '2026-04-01T00:00:00.000Z'));
    const { keptSessions, state, world } = openSessionsScreen(repository);
    await keptSessions.enter();
    await keptSessions.settle(session.id, 'AB');
    world.nowMs -= 60_000; // Another device, whose clock is behind.
    await keptSessions.reopen(session.id, 'KN');
    expect(state().problem).toBeNull();
    expect(state().sessions).toMatchObject([{ isOpen: true, settlement: null, reopened: { by: 'KN' } }]);
    await vi.waitFor(() => expect(state().sessions).toMatchObject([{ isOpen: true }]));
    await keptSessions.settle(session.id, 'AB');
    expect(state().sessions).toMatchObject([{ isOpen: false, settlement: { who: 'AB' } }]);
    expect((await repository.sessions.find(session.id))!.settles).toHaveLength(2);
    const { log } = (await repository.patients.find(idOf(6)))!;
    expect(log.map(({ what, by }) => [what, by])).toEqual([
      ['concern-settled', 'AB'],
      ['review-withdrawn', 'KN'],
      ['concern-settled', 'AB'],
    ]);
  });

  it('is not opened again where no record of the patient could hold who did', async () => {
    const { repository } = await deviceWithSession();
    await repository.sessions.save(gaveWay);
    const { keptSessions, state } = openSessionsScreen(repository);
    await keptSessions.enter();
    await keptSessions.settle(session.id, 'AB');
    await keptSessions.reopen(session.id, 'AB');
    expect(state().problem?.sentence).toMatch(/no record of this patient yet in which it could be signed/);
    expect(state().sessions).toMatchObject([{ isOpen: false }]);
  });

  it('is not needed where a later session of the same patient says who cleared it', async () => {
    const { repository } = await deviceWithSession();
    await repository.sessions.save(gaveWay);
    const at = '2026-04-08T06:07:08.000Z';
    const later: SessionDocument = {
      ...session,
      id: idOf(8),
      sets: [],
      settles: [{ visitId: session.id, by: 'professional', who: 'a doctor', at }],
    };
    await repository.sessions.save({ ...later, patient: 'somebody else' });
    const { keptSessions, state } = openSessionsScreen(repository);
    const isOpen = () => state().sessions!.find(({ id }) => id === session.id)!.isOpen;
    await keptSessions.enter();
    expect(isOpen()).toBe(true);
    await repository.sessions.save(later);
    await vi.waitFor(() => expect(isOpen()).toBe(false));
  });

  it('says what went wrong', async () => {
    const { repository } = await deviceWithSession();
    const { keptSessions, state } = openSessionsScreen(repository);
    await keptSessions.settle(idOf(9), 'AB');
    expect(state().problem?.sentence).toBe(storageProblem('missing').message);
  });
});

describe('remove(which)', () => {
  const which = { id: session.id, kind: 'visit' } as const;

  it('deletes the session with recording and video, once it can no longer be undone', async () => {
    const { repository } = await deviceWithSession();
    const { keptSessions, state, ring, world } = openSessionsScreen(repository);
    await keptSessions.enter();
    keptSessions.remove(which);
    const dueMs = 5000 + undoMs;
    expect(state().removals).toEqual([{ id: session.id, patients: [], name: null, records: [which], dueMs }]);
    expect(world.notes).toEqual([{ ...which, dueMs }]);
    expect(await repository.sessions.find(session.id)).not.toBeNull();
    ring(undoMs);
    await vi.waitFor(() => expect(state().removals).toEqual([]));
    expect(await repository.sessions.find(session.id)).toBeNull();
    expect(await repository.recordings.find(recording.id)).toBeNull();
    expect(await repository.videos.list()).toEqual([]);
    expect(state()).toMatchObject({ removals: [], sessions: [] });
    expect(world.notes).toEqual([]);
  });

  it('deletes nothing if it is undone', async () => {
    const { repository } = await deviceWithSession();
    const { keptSessions, state, world, timers } = openSessionsScreen(repository);
    await keptSessions.enter();
    keptSessions.remove(which);
    keptSessions.undoRemove(session.id);
    expect(timers).toEqual([]);
    expect(await repository.sessions.find(session.id)).not.toBeNull();
    expect(state().removals).toEqual([]);
    expect(world.notes).toEqual([]);
  });

  it('reports that it can’t be deleted, and shows it again', async () => {
    const { repository } = await deviceWithSession();
    const stuck = {
      ...repository,
      sessions: { ...repository.sessions, remove: () => Promise.reject(new Error('stuck')) },
    };
    const { keptSessions, state, ring } = openSessionsScreen(stuck);
    await keptSessions.enter();
    keptSessions.remove(which);
    ring(undoMs);
    await vi.waitFor(() => expect(state().problem).not.toBeNull());
    expect(state().problem?.title).toBe('This could not be deleted');
    await vi.waitFor(() => expect(state().removals).toEqual([]));
    expect(state().sessions).toMatchObject([{ id: session.id }]);
  });

  it('deletes what was still due when the page was last closed', async () => {
    const { repository } = await deviceWithSession();
    const { keptSessions, state, world } = openSessionsScreen(repository, {
      notes: [{ ...which, dueMs: 4999 }],
    });
    await keptSessions.enter();
    expect(state().sessions).toEqual([]);
    expect(world.notes).toEqual([]);
  });

  it('stays deleted where the clock was set back meanwhile', async () => {
    const { repository } = await deviceWithSession();
    const twoDaysMs = 2 * 86_400_000;
    const { keptSessions, state, world } = openSessionsScreen(repository, {
      notes: [{ ...which, dueMs: 5000 + twoDaysMs }],
    });
    await keptSessions.enter();
    expect(state().sessions).toEqual([]);
    expect(world.notes).toEqual([]);
  });

  it('leaves alone what another tab can still undo', async () => {
    const { repository } = await deviceWithSession();
    const notes = [{ ...which, dueMs: 5001 }];
    const { keptSessions, state, world } = openSessionsScreen(repository, { notes });
    await keptSessions.enter();
    expect(state().sessions).toHaveLength(1);
    expect(world.notes).toEqual(notes);
  });
});

describe('a session that comes again while it is listed', () => {
  it('is listed as it is kept now', async () => {
    const { repository } = await deviceWithSession();
    const { keptSessions, state } = openSessionsScreen(repository);
    await keptSessions.enter();
    const shown = () => state().sessions?.[0]?.sets[0]?.reading;
    expect(shown()).toMatchObject({ state: 'read', hasVideo: true });
    expect(shown()).not.toHaveProperty('isReviewed');
    const { edition } = (await repository.recordings.findHead(recording.id))!;
    const reviewed = { by: 'T1', at: recording.createdAt };
    const review = { limitsSet: [], remarks: [], cues: [], reviewed };
    await repository.recordings.update({ ...recordingHead(recording), review }, edition);
    await vi.waitFor(() => expect(shown()).toMatchObject({ isReviewed: true }));
    keptSessions.leave();
    await repository.keepTogether(session, [
      { recording, visitId: session.id, fromVideo: 'impossible', video: null },
    ]);
    await keptSessions.enter();
    await vi.waitFor(() => expect(shown()).toMatchObject({ state: 'read', hasVideo: false }));
    expect(shown()).not.toHaveProperty('isReviewed');
  });
});

describe('removePatient(patient)', () => {
  const other = { ...session, id: '9a7b0c3c-6d2e-4c57-9a5b-0f6f1f0e9d10', patient: 'Grey Otter 3' };
  const others = { ...recording, id: '9a7b0c3c-6d2e-4c57-9a5b-0f6f1f0e9d11' };

  /** A device with two patients; the first has a plan, a draft, the last plan and a set that was broken off. */
  async function twoPatients() {
    const { device, repository } = await deviceWithSession();
    await repository.sessions.save({ ...other, sets: [{ ...session.sets[0]!, sessionId: others.id }] });
    await repository.recordings.save(others, { visitId: other.id, video: null, fromVideo: 'impossible' });
    await repository.plans.save('one', JSON.stringify({ patient: session.patient }));
    await repository.plans.save('other', JSON.stringify({ patient: other.patient }));
    await repository.notes.write('draft', JSON.stringify({ patient: session.patient, items: 'half' }));
    await repository.notes.write('last-plan', JSON.stringify({ patient: session.patient }));
    await repository.notes.write('keys', '[]');
    // Broken off in a tab that is gone: this one does not hold its mark.
    const gone = await device.open({ marks: createMarks(undefined) });
    const broken = { ...smallSetStart(), id: '9a7b0c3c-6d2e-4c57-9a5b-0f6f1f0e9d12', visitId: session.id };
    const set = await gone.beginSet(broken, () => undefined);
    await set.video!.write(new Blob(['half a film']));
    return { device, repository };
  }

  it('deletes all of one patient, so that nothing stays, and nothing of another', async () => {
    const { device, repository } = await twoPatients();
    const { keptSessions, state, ring, world, deleted } = openSessionsScreen(repository);
    await keptSessions.enter();
    expect((await repository.interrupted()).found).toHaveLength(1);
    await keptSessions.removePatient(session.patient);
    expect(state().removals).toMatchObject([{ patients: [session.patient], records: { length: 5 } }]);
    expect(JSON.stringify(world.notes)).not.toContain(session.patient);
    ring(undoMs);
    await vi.waitFor(() => expect(state().removals).toEqual([]));
    expect(deleted).toEqual([session.patient]);
    expect(state().sessions!.map(({ patient }) => patient)).toEqual([other.patient]);

    const records = await device.openRecords();
    const left: unknown[] = [];
    for (const table of tableNames) left.push(...(await records.list(table)));
    expect(JSON.stringify(left)).not.toContain(session.patient);
    expect(JSON.stringify(left)).not.toContain(recording.id);
    for (const table of ['visits', 'sessions', 'facts', 'plans'] as const)
      expect(await records.keys(table), table).toHaveLength(1);
    // What was deleted is not to come back unasked; the hash of its id says no more than that.
    expect(await records.keys('notes')).toEqual([expect.stringMatching(/^deleted:[0-9a-f]{32}$/), 'keys']);
    expect((await records.keys('rows')).every((key) => key.includes(others.id))).toBe(true);
    for (const table of ['sets', 'tracking'] as const) expect(await records.keys(table)).toEqual([]);
    expect(await device.videos.list()).toEqual([]);
  });

  it('is undone as a whole', async () => {
    const { repository } = await twoPatients();
    const { keptSessions, state, world, ring, deleted } = openSessionsScreen(repository);
    await keptSessions.enter();
    await keptSessions.removePatient(session.patient);
    keptSessions.undoRemove(state().removals[0]!.id);
    ring(undoMs);
    expect(world.notes).toEqual([]);
    expect(deleted).toEqual([]);
    expect(await repository.sessions.find(session.id)).not.toBeNull();
  });
});
