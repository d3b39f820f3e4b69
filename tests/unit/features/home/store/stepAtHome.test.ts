import { describe, expect, it, vi } from 'vitest';
import { notedConditions } from '#documents/plan/notedConditions';
import type { SessionDocument } from '#documents/session/sessionDocument';
import { createTestDevice } from '../../../../support/openTestRepository';
import { smallItem, smallPlan } from '../../../../support/smallPlan';
import { smallSession } from '../../../../support/smallSession';
import { openFakeHome, settle } from './fakeHome';

const item = smallItem({ upTo: { min: 20, max: 25 } });
const plan = smallPlan({ items: [item], autoStep: 'within-plan' });
const [set] = smallSession().sets;
/** On the day before the day of the test, with 7 repetitions instead of 5, and too much pain. */
const yesterday: SessionDocument = {
  ...smallSession(),
  planId: plan.id,
  patient: plan.patient,
  startedAt: '2026-05-05T06:07:08.000Z',
  endedAt: '2026-05-05T06:21:08.000Z',
  check: { asked: 'all', signs: [], takenBack: [] },
  sets: [1, 2].map((number) => ({
    ...set!,
    ...{ sessionId: null, number, prescribedRepetitions: 7, painDuring: 5, cutShort: null },
    conditions: notedConditions(item, plan),
  })),
};

async function open(following = plan) {
  const device = createTestDevice();
  const repository = await device.open();
  await repository.plans.save(following.id, JSON.stringify(following));
  await repository.sessions.save(yesterday);
  repository.close();
  return openFakeHome({ device });
}

describe('a plan that lets the device step', () => {
  it('is done as it stands, on the page of the day, unfilmed and before the camera', async () => {
    const { home, state, repository } = await open();
    expect(state().today.items).toEqual([{ ...item, repetitions: 7 }]);
    await home.sayPainToday(1);
    home.noneOfThese(1);
    await settle();
    const { steps, stepped, step } = state();
    expect(step).toBe('camera');
    expect(steps.map(({ item: one }) => one)).toEqual([1, 2].map(() => ({ ...item, repetitions: 7 })));
    expect(stepped).toEqual([
      { kind: 'repeat', item: { ...item, repetitions: 7 }, repetitions: 7, restToday: true },
    ]);
    home.stopBeforeStart();
    await vi.waitFor(() => expect(state().step).toBe('plan'));
    await settle();
    home.sayDone(plan.id);
    expect(state().stepped).toEqual([]);
    await home.saveSession();
    const kept = (await repository.sessions.list()).found.find(({ isUnfilmed }) => isUnfilmed);
    expect(kept?.sets.map(({ prescribedRepetitions }) => prescribedRepetitions)).toEqual([7, 7]);
  });

  it('is done as it is written where it only lets the device propose', async () => {
    const { home, state } = await open({ ...plan, autoStep: 'propose' });
    expect(state().today.items).toEqual([item]);
    await home.sayPainToday(1);
    home.noneOfThese(1);
    await settle();
    expect(state()).toMatchObject({ step: 'camera', stepped: [] });
    expect(state().steps[0]?.item).toEqual(item);
  });
});
