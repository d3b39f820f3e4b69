import { describe, expect, it, vi } from 'vitest';
import { notedConditions } from '#documents/plan/notedConditions';
import { parseSession } from '#documents/session/parseSession';
import type { SessionDocument } from '#documents/session/sessionDocument';
import { createTestDevice } from '../../../../support/openTestRepository';
import { smallHold, smallItem, smallPlan } from '../../../../support/smallPlan';
import { smallSession } from '../../../../support/smallSession';
import { openFakeHome, settle } from './fakeHome';

const plan = smallPlan({ perWeek: 3, returnKeys: [`age1${'q'.repeat(58)}`], painLimit: 4 });
/** Nine days before the day of the test. */
const session: SessionDocument = {
  ...smallSession(),
  planId: plan.id,
  patient: plan.patient,
  startedAt: '2026-04-27T06:07:08.000Z',
  endedAt: '2026-04-27T06:21:08.000Z',
};

async function open({
  kept = [session],
  following = plan,
}: { kept?: SessionDocument[]; following?: typeof plan } = {}) {
  const device = createTestDevice();
  const repository = await device.open();
  await repository.plans.save(following.id, JSON.stringify(following));
  for (const one of kept) await repository.sessions.save(one);
  repository.close();
  return openFakeHome({ device });
}

describe('sayDone(planId)', () => {
  it('keeps all sets of the plan as done and not filmed, the moment it is said', async () => {
    const { home, state, repository } = await open();
    home.sayDone(plan.id);
    expect(state()).toMatchObject({ step: 'after', isUnfilmed: true });
    await settle();
    const kept = (await repository.sessions.list()).found.find(({ isUnfilmed }) => isUnfilmed)!;
    expect(kept).toMatchObject({ planId: plan.id, endedAt: null, endedBecause: null, check: null });
    expect(kept.sets).toEqual([
      { ...set, number: 1 },
      { ...set, number: 2 },
      {
        ...set,
        item: 1,
        task: 'quad-press-hold',
        side: 'left',
        number: 1,
        prescribedRepetitions: null,
        conditions: notedConditions(smallHold(), plan),
      },
    ]);
  });
  const set = {
    sessionId: null,
    item: 0,
    task: 'split-stance-sit-to-stand',
    side: 'right',
    number: 1,
    prescribedRepetitions: 5,
    painDuring: null,
    cutShort: null,
    heldMs: null,
    conditions: notedConditions(smallItem(), plan),
  };

  it('is saved with the pain that is asked for, and warns of too much', async () => {
    const { home, state, repository } = await open();
    home.sayDone(plan.id);
    home.setPainDuring(2, 6);
    expect(state().painWarning).toMatchObject({ when: 'during', score: 6 });
    home.setPainAfter(3);
    await home.saveSession();
    const kept = (await repository.sessions.list()).found.find(({ isUnfilmed }) => isUnfilmed)!;
    expect(parseSession(JSON.stringify(kept))).toMatchObject({
      painAfter: 3,
      sets: [{}, {}, { painDuring: 6 }],
    });
    expect(kept.endedAt).not.toBeNull();
  });

  it('asks how the knee was the day after the last session, once', async () => {
    const { home, state, repository } = await open();
    home.sayDone(plan.id);
    expect(state().afterLast).toEqual({ visitId: session.id, worst: null, swelling: null });
    home.setWorstAfterLast(6);
    await home.saveSession();
    const kept = (await repository.sessions.list()).found.find(({ isUnfilmed }) => isUnfilmed)!;
    expect(kept.afterLast).toEqual({ visitId: session.id, worst: 6, swelling: null });
    home.startOver();
    await vi.waitFor(() => expect(state().today.doneAt).toHaveLength(2));
    expect(state().today.askedAfter).toBeNull();
    home.sayDone(plan.id);
    expect(state().afterLast).toBeNull();
  });

  it('counts for the week, and leaves nothing behind for the next session', async () => {
    const { home, state } = await open();
    home.sayDone(plan.id);
    await home.saveSession();
    home.startOver();
    await vi.waitFor(() => expect(state()).toMatchObject({ step: 'plan', isUnfilmed: false, sets: [] }));
    await vi.waitFor(() =>
      expect(state().today.doneAt).toEqual(['2026-05-06T07:08:10.000Z', session.startedAt]),
    );
    expect(state().today.unsent[0]).toMatchObject({ sets: 3, isFilmed: false, isAnswer: false });
  });

  it.each([
    [[smallItem()], null],
    [[smallItem(), smallHold()], { before: { left: null, right: null }, after: { left: null, right: null } }],
  ])('asks for each knee where both legs work (%#)', async (items, painBySide) => {
    const { home, state } = await open({ following: { ...plan, items } });
    home.sayDone(plan.id);
    expect(state().painBySide).toEqual(painBySide);
  });

  it('does nothing for a plan that is not kept, or in the middle of a session', async () => {
    const { home, state } = await open();
    home.sayDone('no such plan');
    expect(state().step).toBe('plan');
    await home.openKeptPlan(plan.id);
    const { step } = state();
    home.sayDone(plan.id);
    expect(state()).toMatchObject({ step, isUnfilmed: false, sets: [] });
  });
});

describe('answerSilence(planId, reason)', () => {
  it('keeps a record of nothing but the answer, which can be sent, and asks no more', async () => {
    const { home, state, repository, device } = await open();
    expect(state().today.silentSince).toBe(session.startedAt);
    await home.answerSilence(plan.id, 'no-time');
    expect(state()).toMatchObject({
      step: 'plan',
      today: { silentSince: null, doneAt: [session.startedAt] },
    });
    const [record] = (await repository.sessions.list()).found;
    expect(parseSession(JSON.stringify(record))).toMatchObject({
      planId: plan.id,
      patient: plan.patient,
      painLimit: 4,
      startedAt: '2026-05-06T07:08:10.000Z',
      silence: { reason: 'no-time', since: session.startedAt },
      sets: [],
    });
    expect(state().today.unsent[0]).toMatchObject({ id: record!.id, isAnswer: true });
    const later = await openFakeHome({ device });
    expect(later.state().today.silentSince).toBeNull();
  });

  it('says where it could not be kept, and still asks', async () => {
    const { home, state, repository } = await open();
    repository.sessions.save = () => Promise.reject(new Error('full'));
    await home.answerSilence(plan.id, 'away');
    expect(state().problem).not.toBeNull();
    expect(state().today.silentSince).toBe(session.startedAt);
  });

  it('keeps nothing where nothing was asked', async () => {
    const { home, state, repository } = await open({ kept: [] });
    expect(state().today.silentSince).toBeNull();
    await home.answerSilence(plan.id, 'away');
    expect((await repository.sessions.list()).found).toEqual([]);
  });
});

describe('closeSilence()', () => {
  it('asks no more, on another day neither, and keeps no record', async () => {
    const { home, state, repository, device } = await open();
    await home.closeSilence();
    expect(state().today.silentSince).toBeNull();
    expect((await repository.sessions.list()).found).toHaveLength(1);
    const later = await openFakeHome({ device });
    expect(later.state().today.silentSince).toBeNull();
  });
});

describe('saveReminders(planId, perWeek, at)', () => {
  it('saves a calendar file that ends with the plan’s review, and names nobody', async () => {
    const { home, world } = await open({ following: { ...plan, reviewDate: '2026-06-30' } });
    home.saveReminders('no such plan', 3, { hour: 7, minute: 30 });
    home.saveReminders(plan.id, 3, { hour: 7, minute: 30 });
    const [file, ...others] = world.saved;
    expect(others).toEqual([]);
    expect(file!.fileName).toBe('exercises.ics');
    expect(file!.text).toContain('SUMMARY:Exercises\r\n');
    expect(file!.text).toContain('UNTIL=20260630T235959\r\n');
    expect(file!.text).not.toContain(plan.patient);
  });
});
