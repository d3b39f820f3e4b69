import { describe, expect, it, vi } from 'vitest';
import type { PlanDocument } from '#documents/plan/planDocument';
import { planToFragment } from '#documents/plan/planLink';
import { parseRecording } from '#documents/recording/parseRecording';
import type { SessionDocument } from '#documents/session/sessionDocument';
import type { HomeState, StepParts } from '#features/home/store/homeState';
import { sentOutName } from '#shell/receivedNotes';
import { recordingText } from '../../../../support/fakeAdapters';
import { createTestDevice } from '../../../../support/openTestRepository';
import { smallItem, smallPlan } from '../../../../support/smallPlan';
import { smallSession } from '../../../../support/smallSession';
import { openFakeHome, settle } from './fakeHome';

const plan = smallPlan({ returnKeys: [`age1${'q'.repeat(58)}`] });
const recording = parseRecording(recordingText);
const session = {
  ...smallSession(),
  planId: plan.id,
  startedAt: '2026-05-05T06:07:08.000Z',
  endedAt: '2026-05-05T06:21:08.000Z',
};

/** A device with a plan, and a session of it with one recording. */
async function deviceOfYesterday() {
  const device = createTestDevice();
  const repository = await device.open();
  await repository.plans.save(plan.id, JSON.stringify(plan));
  const [first, ...others] = session.sets;
  await repository.sessions.save({ ...session, sets: [{ ...first!, sessionId: recording.id }, ...others] });
  await repository.recordings.save(recording, { visitId: session.id, video: null, fromVideo: 'impossible' });
  repository.close();
  return device;
}

describe('today', () => {
  it('says how last time went, and what was not sent yet', async () => {
    const { state } = await openFakeHome({ device: await deviceOfYesterday() });
    const { last, unsent } = state().today;
    // Peaks of about 0, 10 and 22 degrees where 12 is the limit: the second is too close to count on.
    expect(last).toEqual({
      id: session.id,
      startedAt: session.startedAt,
      sets: 2,
      painDuring: 3,
      inLine: { about: 1, of: 3 },
    });
    expect(unsent).toEqual([
      {
        id: session.id,
        planId: plan.id,
        startedAt: session.startedAt,
        sets: 2,
        isBrokenOff: false,
        isFilmed: true,
        isAnswer: false,
        recipients: plan.returnKeys,
      },
    ]);
  });

  it('leads to all of the last result, and back', async () => {
    const { home, state } = await openFakeHome({ device: await deviceOfYesterday() });
    await home.showLastTime();
    const { step, session: shown, told } = state() as HomeState & StepParts['past'];
    expect(step).toBe('past');
    expect(shown).toMatchObject({ id: session.id, remark: session.remark });
    expect(told).toMatchObject([
      { result: { side: 'right', number: 1 }, found: 3, numbers: 'first', painDuring: 3 },
      { result: { side: 'left', heldMs: 30_000 }, found: null, summary: null },
    ]);
    expect(told[0]!.summary?.practise).not.toBe('');
    home.back();
    await vi.waitFor(() => expect(state().step).toBe('plan'));
  });

  it('leads to the page that sends an earlier session, and back; what was sent is listed no more', async () => {
    const { home, state, repository } = await openFakeHome({ device: await deviceOfYesterday() });
    await home.showSending('no such session');
    expect(state().step).toBe('plan');
    await home.showSending(session.id);
    expect(state()).toMatchObject({ step: 'send', session: { id: session.id } });
    await repository.notes.write(sentOutName(session.id), '2026-05-06T07:10:00.000Z');
    home.back();
    await vi.waitFor(() => expect(state().today.unsent).toEqual([]));
    expect(state().step).toBe('plan');
  });
});

describe('plans that are kept', () => {
  it('are none where they cannot be read', async () => {
    const { state } = await openFakeHome({ device: await deviceOfYesterday() }, (adapters) => {
      const open = adapters.openRepository;
      adapters.openRepository = async () => {
        const opened = await open();
        opened.repository.plans.list = () => Promise.reject(new Error('cannot be read'));
        return opened;
      };
    });
    expect(state().plans).toEqual([]);
  });
});

describe('a plan that is shown and not accepted yet', () => {
  const planFile = new File([JSON.stringify(plan)], 'my-plan.json');

  it('is shown again when the page is opened anew, until it is accepted', async () => {
    const device = createTestDevice();
    const first = await openFakeHome({ device });
    await first.home.openPlanFile(planFile);
    await settle();
    const second = await openFakeHome({ device });
    expect(second.state()).toMatchObject({ step: 'overview', plan: { id: plan.id } });
    expect((await second.repository.plans.list()).found).toEqual([]);
    second.home.setConfirmed(true);
    second.home.confirm();
    await settle();
    const third = await openFakeHome({ device });
    expect(third.state()).toMatchObject({ step: 'plan', plans: [{ id: plan.id }] });
  });

  it('does not take the place of what was chosen meanwhile', async () => {
    const device = createTestDevice();
    const first = await openFakeHome({ device });
    await first.home.openPlanFile(planFile);
    await settle();
    const other = smallPlan({ id: '6d0c0f0e-4b7a-4f6f-8d5e-2a9b1c3d4e52', patient: 'invented-otter' });
    const second = await openFakeHome({ device }, (adapters) => {
      const open = adapters.openRepository;
      adapters.openRepository = async () => {
        await settle();
        return open();
      };
    });
    second.home.back();
    await second.home.openPlanFile(new File([JSON.stringify(other)], 'other.json'));
    await second.home.enter();
    expect(second.state()).toMatchObject({ step: 'overview', plan: { patient: 'invented-otter' } });
  });
});

describe('a link', () => {
  it('opens in place of a plan that is only shown', async () => {
    const { home, state } = await openFakeHome();
    await home.openPlanFile(new File([JSON.stringify(plan)], 'my-plan.json'));
    await home.openPlanLink(`#${planToFragment({ ...plan, patient: 'invented-otter' })}`);
    expect(state()).toMatchObject({ step: 'overview', plan: { patient: 'invented-otter' } });
    await home.openPlanLink('#plan=1.damaged');
    expect(state().step).toBe('plan');
    expect(state().problem?.sentence).toMatch(/not whole/);
  });
});

describe('a plan that was followed before', () => {
  it('begins with what is new, and its whole text is shown to those who ask for it', async () => {
    const device = await deviceOfYesterday();
    const repository = await device.open();
    const asked = { asked: 'all' as const, signs: [], takenBack: [] };
    await repository.sessions.save({ ...session, check: asked });
    repository.close();
    const { home, state } = await openFakeHome({ device });
    await home.openKeptPlan(plan.id);
    expect(state()).toMatchObject({ step: 'check', asked: 'new' });
    home.back();
    home.back();
    await home.openKeptPlan(plan.id, true);
    expect(state().step).toBe('overview');
  });

  it('is shown whole where its signs were never asked for', async () => {
    const { home, state } = await openFakeHome({ device: await deviceOfYesterday() });
    await home.openKeptPlan(plan.id);
    expect(state().step).toBe('overview');
  });
});

/** A device on which the plan was followed before, with what else was said that day. */
async function followedDevice(
  planChange: Partial<PlanDocument> = {},
  sessionChange: Partial<SessionDocument> = {},
) {
  const device = createTestDevice();
  const repository = await device.open();
  await repository.plans.save(plan.id, JSON.stringify({ ...plan, ...planChange }));
  await repository.sessions.save({
    ...session,
    check: { asked: 'all', signs: [], takenBack: [] },
    ...sessionChange,
  });
  repository.close();
  return device;
}

async function openFollowed(...parts: Parameters<typeof followedDevice>) {
  const opened = await openFakeHome({ device: await followedDevice(...parts) });
  const kept = async () => {
    await settle();
    const { found } = await opened.repository.sessions.list();
    return found.find(({ id }) => id !== session.id);
  };
  return { ...opened, kept };
}

describe('continueToday()', () => {
  const check = { asked: 'all' as const, signs: [], takenBack: [] };
  const brokenOff = { startedAt: '2026-05-06T06:30:00.000Z', endedAt: null, check };

  it('goes on with what is left, after the same questions, as a session of its own', async () => {
    const [line] = session.sets;
    const sets = [{ ...line!, sessionId: null, cutShort: null }];
    const { home, state, kept } = await openFollowed({}, { ...brokenOff, sets });
    expect(state().today.left).toMatchObject({ done: 1, of: 3 });
    expect(state().today.unsent).toMatchObject([{ id: session.id, isBrokenOff: true }]);
    await home.continueToday();
    expect(state()).toMatchObject({ step: 'check', asked: 'new' });
    expect(state().steps.map(({ item, number }) => [item.kind, number])).toEqual([
      ['repetitions', 2],
      ['hold', 1],
    ]);
    home.noneOfThese();
    home.setPainBefore(1);
    home.goOnFromPain();
    expect(state()).toMatchObject({ step: 'camera', isAgain: true });
    expect(await kept()).toMatchObject({ painBefore: 1, check: { asked: 'new' } });
  });

  it('offers nothing after a stop, nor on another day', async () => {
    const stopped = await openFollowed({}, { ...brokenOff, endedBecause: { reason: 'other', fell: null } });
    expect(stopped.state().today.left).toBeNull();
    await stopped.home.continueToday();
    expect(stopped.state().step).toBe('plan');
    const yesterday = await openFollowed({}, { check, endedAt: null });
    expect(yesterday.state().today.left).toBeNull();
  });
});

describe('sayPainToday(score, side)', () => {
  it('leads to what is new, then to the camera, and is asked for once', async () => {
    const { home, state, kept } = await openFollowed();
    expect(state().today.isFollowed).toBe(true);
    await home.sayPainToday(2);
    expect(state()).toMatchObject({ step: 'check', asked: 'new', painBefore: 2 });
    expect(await kept()).toMatchObject({ planId: plan.id, painBefore: 2, check: null });
    home.noneOfThese();
    expect(state()).toMatchObject({ step: 'camera', isAgain: true });
    expect(await kept()).toMatchObject({ painBefore: 2, check: { asked: 'new', signs: [] } });
  });

  it('leads to the warning where it is too much, and a session that does not begin is a record', async () => {
    const { home, state, kept } = await openFollowed({ mayGoOnAbove: false });
    await home.sayPainToday(5);
    expect(state()).toMatchObject({ step: 'pain-before', painWarning: { score: 5, mayGoOn: false } });
    home.goOnFromPain();
    home.goOnFromPain(true);
    expect(state().step).toBe('pain-before');
    home.stopBeforeStart();
    expect(state().step).toBe('summary');
    expect(await kept()).toMatchObject({ painBefore: 5, endedBecause: { reason: 'pain' }, sets: [] });
  });

  it('goes on above the limit only where the plan allows it, and writes it down', async () => {
    const { home, state, kept } = await openFollowed({ mayGoOnAbove: true });
    await home.sayPainToday(7);
    home.goOnFromPain(true);
    expect(state().step).toBe('pain-before');
    home.setPainBefore(6);
    home.goOnFromPain(true);
    expect(state().step).toBe('check');
    expect(await kept()).toMatchObject({ wentOnAbove: [{ when: 'before', score: 6, limit: 4 }] });
  });

  it('counts two above the usual pain as too much', async () => {
    const { home, state } = await openFollowed({ usualPain: 0 });
    await home.sayPainToday(3);
    expect(state()).toMatchObject({ step: 'pain-before', painWarning: { score: 3 } });
  });

  it('is followed by the pain of the day after, which says that nothing is new, and takes no step more', async () => {
    const { home, state, kept } = await openFollowed();
    await home.sayPainToday(2);
    expect(state()).toMatchObject({ step: 'check', askedAfter: session.id });
    home.setLessSwollen(true);
    home.noneOfThese(4);
    expect(state().step).toBe('camera');
    expect(await kept()).toMatchObject({
      check: { asked: 'new', signs: [] },
      afterLast: { visitId: session.id, worst: 4, swelling: 'less' },
    });
  });

  it('keeps how swollen the knee was with the sign, and nothing of pain that was not answered', async () => {
    const { home, kept } = await openFollowed();
    await home.sayPainToday(2);
    home.setSign('much-swollen');
    expect(await kept()).toMatchObject({
      afterLast: { visitId: session.id, worst: null, swelling: 'much-more' },
    });
    home.setSign(null);
    expect(await kept()).toMatchObject({ afterLast: { worst: null, swelling: null } });
  });

  it.each([
    ['nothing was done', { sets: [] }],
    ['it was today', { startedAt: '2026-05-06T06:07:08.000Z', endedAt: '2026-05-06T06:21:08.000Z' }],
  ])('does not ask about the day after where %s', async (_, change) => {
    const { home, state, kept } = await openFollowed({}, change);
    await home.sayPainToday(2);
    expect(state()).toMatchObject({ step: 'check', askedAfter: null });
    home.noneOfThese();
    expect(await kept()).toMatchObject({ afterLast: null });
  });

  it('waits for both knees where both legs work, and takes the one that hurts more', async () => {
    const items = [smallItem({ sides: ['left', 'right'] })];
    const { home, state, kept } = await openFollowed({ items });
    await home.sayPainToday(1, 'left');
    expect(state()).toMatchObject({
      step: 'plan',
      painToday: { painBySide: { before: { left: 1, right: null } } },
    });
    await home.sayPainToday(3, 'right');
    expect(state().step).toBe('check');
    expect(await kept()).toMatchObject({ painBefore: 3, painBySide: { before: { left: 1, right: 3 } } });
  });

  it('warns of too much in one knee before the other is asked about', async () => {
    const { home, state } = await openFollowed({ items: [smallItem({ sides: ['left', 'right'] })] });
    await home.sayPainToday(8, 'left');
    expect(state()).toMatchObject({ step: 'pain-before', painWarning: { score: 8 } });
    home.setPainBefore(2, 'left');
    home.goOnFromPain();
    expect(state().step).toBe('pain-before');
    home.setPainBefore(0, 'right');
    home.goOnFromPain();
    expect(state().step).toBe('check');
  });

  it('comes before what was said the last time, which comes before what is new', async () => {
    const { home, state } = await openFollowed({}, { endedBecause: { reason: 'gave-way', fell: null } });
    await home.sayPainToday(1);
    expect(state().step).toBe('last-time');
    home.goOnUnseen();
    expect(state().step).toBe('last-time');
    home.sayCleared('my doctor');
    expect(state()).toMatchObject({ step: 'check', asked: 'new' });
  });

  it('can be corrected: back leads to the number, and from there to the day', async () => {
    const { home, state, kept } = await openFollowed();
    await home.sayPainToday(2);
    home.back();
    expect(state()).toMatchObject({ step: 'pain-before', painBefore: 2 });
    home.setPainBefore(1);
    home.goOnFromPain();
    home.noneOfThese();
    home.back();
    expect(state()).toMatchObject({ step: 'check', asked: 'new' });
    home.back();
    home.back();
    await vi.waitFor(() => expect(state().step).toBe('plan'));
    expect(await kept()).toMatchObject({ painBefore: 1 });
  });

  it('can be said again where the plan could not be opened', async () => {
    const { home, state, repository } = await openFollowed();
    const { find } = repository.plans;
    repository.plans.find = () => Promise.resolve(null);
    await home.sayPainToday(2);
    expect(state()).toMatchObject({ step: 'plan', painToday: { painBefore: null } });
    expect(state().problem).not.toBeNull();
    repository.plans.find = find;
    await home.sayPainToday(2);
    expect(state().step).toBe('check');
  });
});

describe('the camera of a plan that was followed before', () => {
  const toCamera = async (opened: Awaited<ReturnType<typeof openFollowed>>) => {
    await opened.home.sayPainToday(1);
    opened.home.noneOfThese();
    await settle();
  };

  it('is on at once where it is allowed, and it is the one of last time', async () => {
    const device = await followedDevice();
    const first = await openFakeHome({ device }, (_, world) => (world.isCameraAllowed = true));
    await first.home.sayPainToday(1);
    first.home.noneOfThese();
    await settle();
    expect(first.world.wishes).toEqual([{ facing: 'front' }]);
    expect(first.state().camera.state).toBe('on');
    first.home.setSound({ tones: false });
    first.home.startExercise();
    await settle();
    const second = await openFakeHome({ device });
    second.world.isCameraAllowed = true;
    expect(second.state().sound).toMatchObject({ voice: true, tones: false });
    await second.home.sayPainToday(1);
    second.home.noneOfThese();
    await settle();
    expect(second.world.wishes).toEqual([{ deviceId: 'cam-7' }]);
  });

  it('waits for the button where the browser would ask', async () => {
    const opened = await openFollowed();
    await toCamera(opened);
    expect(opened.state()).toMatchObject({ step: 'camera', isLooking: false, camera: { state: 'off' } });
    expect(opened.world.wishes).toEqual([]);
  });

  it('asks about the chair once: what stands beside Begin counts as answered', async () => {
    const opened = await openFollowed();
    opened.world.isCameraAllowed = true;
    await toCamera(opened);
    opened.home.startExercise();
    expect(opened.state()).toMatchObject({ step: 'exercise', isFurniturePlaced: true });
  });

  it('says before the walk to the place that the videos would not fit', async () => {
    const opened = await openFollowed();
    const give = (freeBytes: number) =>
      (opened.repository.space = () => Promise.resolve({ usedBytes: 1000, freeBytes }));
    // Two sets of five repetitions: 2 · (30 s + 5 · 5 s) at 375 kB a second.
    const neededBytes = 41_250_000;
    give(neededBytes - 1);
    await toCamera(opened);
    expect(opened.state()).toMatchObject({ step: 'camera', hasRoom: false });
    give(neededBytes);
    opened.home.back();
    opened.home.noneOfThese();
    await settle();
    expect(opened.state()).toMatchObject({ step: 'camera', hasRoom: true });
    opened.repository.space = () => Promise.resolve(null);
    opened.home.back();
    opened.home.noneOfThese();
    await settle();
    expect(opened.state()).toMatchObject({ step: 'camera', hasRoom: true });
  });
});
