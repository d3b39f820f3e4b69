import { describe, expect, it, vi } from 'vitest';
import { kneeDirection } from '#core/scoring/deciding';
import { CameraProblem } from '#device/camera/cameraProblem';
import { storageProblem } from '#device/storage/storageProblem';
import type { PlanDocument } from '#documents/plan/planDocument';
import { parseRecording } from '#documents/recording/parseRecording';
import { concernsNow } from '#features/home/store/concernsNow';
import { partOf } from '#features/home/store/homeState';
import { measuredShare } from '#features/home/store/telling';
import { sealPlanLink } from '#shell/sealedPlan';
import { createTestDevice } from '../../../../support/openTestRepository';
import { quickScrypt } from '../../../../support/quickScrypt';
import { smallHold, smallItem, smallPlan } from '../../../../support/smallPlan';
import { openFakeHome, settle } from './fakeHome';

type Opened = Awaited<ReturnType<typeof openFakeHome>>;

/** Two sets of three sit-to-stands with the right leg, then two holds. */
const plan = smallPlan({
  items: [
    smallItem({ repetitions: 3, feedback: 'every-repetition' }),
    smallHold({ holdSeconds: 2, restSeconds: 3 }),
  ],
});
const planFile = (document: object = plan) => new File([JSON.stringify(document)], 'my-plan.json');

async function atCamera(opened: Opened, document: object = plan) {
  const { home, world } = opened;
  await home.openPlanFile(planFile(document));
  home.setConfirmed(true);
  home.confirm();
  home.noneOfThese();
  home.setPainBefore(2);
  home.goOnFromPain();
  await settle();
  return { ...opened, world };
}

async function atExercise(opened: Opened, document: object = plan) {
  await atCamera(opened, document);
  await opened.home.openCamera();
  opened.home.startExercise();
  opened.home.setFurniturePlaced(true);
  await settle();
  return opened;
}

/** The careful measuring of the first set is over. */
async function careful(state: Opened['state']): Promise<void> {
  for (let i = 0; i < 200 && state().sets[0]!.numbers === 'coming'; i++) await settle();
}

const keyOf = (letter: string) => `age1${letter.repeat(58)}`;

describe('a link with a passphrase', () => {
  it('asks for it, and opens the plan with it', async () => {
    const { home, state } = await openFakeHome();
    await home.openPlanLink(`#${await sealPlanLink(plan, 'otter river stone lamp', quickScrypt)}`);
    expect(state()).toMatchObject({ step: 'plan', isSealed: true, problem: null });
    await home.openSealedPlan('another river stone lamp');
    expect(state().problem?.sentence).toMatch(/passphrase does not open/);
    expect(state().step).toBe('plan');
    await home.openSealedPlan('otter river stone lamp');
    expect(state()).toMatchObject({ step: 'overview', plan: { patient: plan.patient }, problem: null });
  });
});

describe('the key of a plan', () => {
  const openPlan = async (opened: Opened, change: Partial<typeof plan>) => {
    const { home, state } = opened;
    await home.openPlanFile(planFile({ ...plan, ...change }));
    const { earlierKeys } = state() as { earlierKeys?: string[] | null };
    return earlierKeys;
  };
  const accept = async ({ home, repository }: Opened) => {
    home.setConfirmed(true);
    home.confirm();
    await vi.waitFor(async () => expect((await repository.plans.list()).found.length).toBeGreaterThan(0));
    home.stopBeforeStart();
  };

  it('is told where it differs from that of the same plan, or of the last one, before it is used', async () => {
    const opened = await openFakeHome();
    expect(await openPlan(opened, { returnKeys: [keyOf('q')] })).toBeNull();
    expect(opened.world.signedPlans).toEqual([]);
    await accept(opened);
    expect(opened.world.signedPlans).toEqual([plan.id]);
    expect(await openPlan(opened, { returnKeys: [keyOf('q')] })).toBeNull();
    opened.home.back();
    expect(await openPlan(opened, { returnKeys: [keyOf('p')] })).toEqual([keyOf('q')]);
    opened.home.back();
    expect(await openPlan(opened, { id: crypto.randomUUID(), returnKeys: [keyOf('p')] })).toEqual([
      keyOf('q'),
    ]);
    opened.home.back();
    expect(await openPlan(opened, { returnKeys: [] })).toEqual([keyOf('q')]);
    opened.home.back();
    expect(await openPlan(opened, { returnKeys: [keyOf('q'), keyOf('p')] })).toEqual([keyOf('q')]);
    opened.home.back();
    // What was only looked at is not kept.
    expect(await openPlan(opened, { returnKeys: [keyOf('q')] })).toBeNull();
  });

  it('is compared as one of a set: their order says nothing, one more or one less does', async () => {
    const opened = await openFakeHome();
    const both = [keyOf('q'), keyOf('p')];
    expect(await openPlan(opened, { returnKeys: both })).toBeNull();
    await accept(opened);
    expect(await openPlan(opened, { returnKeys: both.toReversed() })).toBeNull();
    opened.home.back();
    expect(await openPlan(opened, { returnKeys: [keyOf('p')] })).toEqual(both);
    opened.home.back();
    expect(await openPlan(opened, { returnKeys: [...both, keyOf('z')] })).toEqual(both);
    opened.home.back();
    expect(await openPlan(opened, { returnKeys: [keyOf('q'), keyOf('z')] })).toEqual(both);
  });
});

describe('a home session', () => {
  it('goes from the plan to the summary, with counts that are those found afterwards', async () => {
    const opened = await openFakeHome();
    const { home, world, state, repository } = await atExercise(opened);
    await world.until('set-done');
    expect(state().sets[0]).toMatchObject({
      result: { counted: 3, prescribed: 3, cutShort: null },
      found: 3,
      keeping: 'kept',
      numbers: 'coming',
    });
    expect(state().heard.map((heard) => heard?.verdict)).toEqual(
      state().sets[0]!.judgements.map(({ verdict }) => verdict),
    );
    const last = state().sets[0]!.judgements.at(-1)!;
    expect(last.verdict).toBe('out');
    expect(kneeDirection(last)).toBe('inward');
    expect(state().sets[0]!.summary?.practise).toContain('inward');
    await world.until('resting');
    home.setPainDuring(0, 3);
    await world.until('set-done');
    await world.until('resting');
    home.setPainDuring(1, 2);
    await world.until('ready'); // The hold needs no placing.
    await world.until('all-done');
    home.finishExercise();
    expect(state().step).toBe('after');
    expect(world.camera?.isOpen).toBe(false);
    expect(world.isAwake).toBe(false);
    home.setPainAfter(1);
    home.setEffort(6);
    home.setRemark('Went well.');
    await home.saveSession();
    expect(state()).toMatchObject({ step: 'summary', saving: 'saved' });
    const { found } = await repository.sessions.list();
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({
      patient: plan.patient,
      planId: plan.id,
      painBefore: 2,
      painAfter: 1,
      effort: 6,
      remark: 'Went well.',
    });
    expect(found[0]!.endedAt).not.toBeNull();
    expect(
      found[0]!.sets.map(({ task, number, heldMs, painDuring }) => [task, number, heldMs, painDuring]),
    ).toEqual([
      ['split-stance-sit-to-stand', 1, null, 3],
      ['split-stance-sit-to-stand', 2, null, 2],
      ['quad-press-hold', 1, 4000, null],
    ]);
    expect((await repository.recordings.list()).found.map(({ id }) => id).sort()).toEqual(
      found[0]!.sets.flatMap(({ sessionId: recordingId }) => recordingId ?? []).sort(),
    );
    expect((await repository.interrupted()).found).toEqual([]);
  });

  it('says a verdict after its count, and no verdict where the plan wants none', async () => {
    const items = [smallItem({ sets: 1, repetitions: 3, feedback: 'only-outside' })];
    const { world } = await atExercise(await openFakeHome(), { ...plan, items });
    await world.until('set-done');
    const said = world.sound.said.map(({ line }) => line);
    const last = said.indexOf('Three. That was the last one.');
    expect(said.slice(last - 3, last + 2)).toEqual([
      'One. Two more.',
      'Two. One more.',
      'Let the knee go out a little, over the foot.',
      'Three. That was the last one.',
      'Let the knee go out a little, over the foot.',
    ]);
    expect(world.sound.tones.filter((tone) => tone === 'outside')).toHaveLength(2);
  });

  it('does not count what was rehearsed before go, live or afterwards', async () => {
    const { home, state, world, repository } = await atExercise(await openFakeHome());
    await world.until('ready');
    world.movesFromMs = world.nowMs;
    await world.until('working');
    await world.wait(16_000);
    home.press('end-set');
    await settle();
    const { result, found, recordingId, judgements } = state().sets[0]!;
    expect(result.counted).toBe(found);
    expect(found).toBeLessThan(3);
    expect(judgements).toHaveLength(found!);
    const { recording } = (await repository.recordings.find(recordingId!))!;
    expect(recording.setup.goMs).toBeGreaterThan(0);
    expect(recording.derived.repetitions).toHaveLength(found!);
  });

  it('hands on to the set what the easy bends before it have shown', async () => {
    const bends = { yawDeg: -3, sdDeg: 2.6, footDeg: { left: 5, right: null } };
    const opened = await openFakeHome({}, (adapters) => {
      adapters.createBendsReader = () => ({ read: () => Promise.resolve(bends) });
    });
    const item = smallItem({ task: 'single-leg-squat', seatHeightCm: null, sets: 1 });
    const { home, state, world, repository } = await atExercise(opened, { ...plan, items: [item] });
    home.press('start-anyway');
    await world.until('bends');
    await world.until('working');
    await world.wait(3000);
    home.press('end-set');
    await settle();
    const { recording } = (await repository.recordings.find(state().sets[0]!.recordingId!))!;
    expect(recording.setup).toMatchObject({ task: 'single-leg-squat', side: 'right', bends });
  });

  it('waits until it is confirmed and no sign applies', async () => {
    const { home, state } = await openFakeHome();
    await home.openPlanFile(planFile());
    home.confirm();
    expect(state().step).toBe('overview');
    home.setConfirmed(true);
    home.confirm();
    expect(state()).toMatchObject({ step: 'check', asked: 'all' });
    home.setSign('calf');
    home.noneOfThese();
    expect(state().step).toBe('check');
    home.setSign(null);
    home.noneOfThese();
    expect(state()).toMatchObject({
      step: 'pain-before',
      check: { asked: 'all', signs: [], takenBack: ['calf'] },
    });
  });

  it('explains what is wrong with a plan, and keeps a good one for the next time', async () => {
    const { home, state, repository } = await openFakeHome();
    await home.openPlanFile(new File(['{'], 'broken.json'));
    expect(state().problem?.sentence).toContain('not JSON');
    expect(state()).toMatchObject({ step: 'plan', isOpening: false });
    await home.openPlanFile(planFile());
    expect(state()).toMatchObject({ step: 'overview', problem: null });
    await settle();
    expect(await repository.plans.find(plan.id)).toBeNull();
    home.setConfirmed(true);
    home.confirm();
    await settle();
    expect(await repository.plans.find(plan.id)).toBe(JSON.stringify(plan));
    home.back();
    await home.openKeptPlan(plan.id);
    expect(state()).toMatchObject({ step: 'overview', plan: { id: plan.id } });
  });

  it('records without a plan', async () => {
    const { home, state } = await openFakeHome();
    await home.startFree({ task: 'single-leg-squat', side: 'left', sets: 2, repetitions: 4 });
    expect(state()).toMatchObject({ step: 'overview', plan: null });
    expect(state().steps.map(({ number, side }) => [number, side])).toEqual([
      [1, 'left'],
      [2, 'left'],
    ]);
  });

  it('holds without a camera', async () => {
    const { home, state, world } = await openFakeHome();
    await home.openPlanFile(planFile({ ...plan, items: [smallHold({ holdSeconds: 2, restSeconds: 3 })] }));
    home.setConfirmed(true);
    home.confirm();
    home.noneOfThese();
    home.setPainBefore(0);
    home.goOnFromPain();
    expect(state().step).toBe('exercise');
    await world.until('all-done');
    expect(state().sets).toMatchObject([{ keeping: 'none', found: null, result: { heldMs: 4000 } }]);
    expect(world.camera).toBeNull();
  });
});

describe('what is said before anything is done', () => {
  async function atCheck(change: Partial<PlanDocument> = {}, device = createTestDevice(), idsFrom = 0) {
    const opened = await openFakeHome({ device }, (_, world) => (world.idsFrom = idsFrom));
    await opened.home.openPlanFile(planFile({ ...plan, ...change }));
    if (opened.state().step === 'overview') {
      opened.home.setConfirmed(true);
      opened.home.confirm();
    }
    const kept = async () => {
      await settle();
      return (await opened.repository.sessions.list()).found;
    };
    return { ...opened, kept, device };
  }
  async function atPain(change: Partial<PlanDocument> = {}) {
    const opened = await atCheck(change);
    opened.home.noneOfThese();
    return opened;
  }

  it('is a session of its own where a sign applies, kept the moment it is chosen', async () => {
    const { home, state, kept } = await atCheck();
    home.setSign('calf');
    expect(await kept()).toMatchObject([
      {
        planId: plan.id,
        endedAt: null,
        check: { asked: 'all', signs: ['calf'], takenBack: [] },
        endedBecause: { reason: 'sign', fell: null },
        sets: [],
      },
    ]);
    home.stopBeforeStart();
    await settle();
    expect(state()).toMatchObject({ step: 'summary', saving: 'saved' });
    expect((await kept())[0]!.endedAt).not.toBeNull();
    home.startOver();
    await home.openPlanFile(planFile());
    expect(state()).toMatchObject({ step: 'last-time' });
    expect(await kept()).toHaveLength(1);
  });

  it('keeps that a sign was taken back, which closes nothing', async () => {
    const { home, state, kept } = await atCheck();
    home.setSign('wound');
    home.setSign(null);
    home.noneOfThese();
    expect(state()).toMatchObject({ step: 'pain-before', endedBecause: null });
    const check = { asked: 'all', signs: [], takenBack: ['wound'] };
    expect(await kept()).toMatchObject([{ check, endedBecause: null }]);
  });

  it('keeps pain that is too much, with the limit, the moment it is chosen, and ends there', async () => {
    const { home, state, kept } = await atPain();
    home.goOnFromPain();
    expect(state().step).toBe('pain-before');
    home.setPainBefore(5);
    expect(state().painWarning).toMatchObject({ when: 'before', score: 5, mayGoOn: false });
    expect(state().painWarning?.words).toBe('Your therapist says: Stop and call the practice.');
    expect(await kept()).toMatchObject([{ painBefore: 5, painLimit: 4, sets: [], endedBecause: null }]);
    home.goOnFromPain();
    home.goOnFromPain(true);
    expect(state().step).toBe('pain-before');
    home.stopBeforeStart();
    expect(await kept()).toMatchObject([{ painBefore: 5, endedBecause: { reason: 'pain' } }]);
    expect(state()).toMatchObject({ step: 'summary', saving: 'saved' });
  });

  it('goes on above the limit where the plan allows it and the person says so, never from 7 on', async () => {
    const { home, state, kept } = await atPain({ mayGoOnAbove: true });
    home.setPainBefore(7);
    home.goOnFromPain(true);
    expect(state().step).toBe('pain-before');
    home.setPainBefore(6);
    home.goOnFromPain();
    expect(state().step).toBe('pain-before');
    home.goOnFromPain(true);
    expect(state()).toMatchObject({ step: 'camera', painBefore: 6 });
    expect(await kept()).toMatchObject([{ wentOnAbove: [{ when: 'before', score: 6, limit: 4 }] }]);
  });

  it('counts two above the usual pain as too much, even within the limit', async () => {
    const { home, state } = await atPain({ usualPain: 0 });
    home.setPainBefore(2);
    expect(state().painWarning).toBeNull();
    home.setPainBefore(3);
    expect(state().painWarning).toMatchObject({ score: 3 });
  });

  it('asks each knee where both legs work, and takes the one that hurts more', async () => {
    const items = [smallItem({ sides: ['left', 'right'] })];
    const { home, state, kept } = await atPain({ items });
    home.setPainBefore(3, 'left');
    home.goOnFromPain();
    expect(state().step).toBe('pain-before');
    home.setPainBefore(1, 'right');
    const before = { left: 3, right: 1 };
    expect(await kept()).toMatchObject([{ painBefore: 3, painBySide: { before } }]);
    home.goOnFromPain();
    expect(state().step).toBe('camera');
  });

  it('is asked about at the next opening until a professional has cleared it', async () => {
    const first = await atCheck();
    first.home.setSign('numbness');
    await settle();
    // The tab was closed without another word.
    const second = await atCheck({}, first.device, 1);
    const [session] = await second.kept();
    expect(second.state()).toMatchObject({
      step: 'last-time',
      earlier: [{ id: session!.id, concerns: [{ kind: 'signs', signs: ['numbness'] }] }],
    });
    second.home.sayUnseen();
    second.home.goOnUnseen();
    expect(second.state()).toMatchObject({ step: 'last-time', isUnseen: true });
    second.home.sayCleared('  ');
    expect(second.state().step).toBe('last-time');
    second.home.sayCleared('my doctor');
    expect(second.state().step).toBe('overview');
    const settled = { visitId: session!.id, by: 'professional', who: 'my doctor' };
    expect((await second.kept()).flatMap(({ settles }) => settles)).toMatchObject([settled]);
    const third = await atCheck({}, first.device, 2);
    expect(third.state()).toMatchObject({ step: 'check', asked: 'new' });
  });

  it('lets somebody go on who has told nobody of pain alone, and asks again the next time', async () => {
    const first = await atPain();
    first.home.setPainBefore(8);
    await settle();
    const second = await atCheck({}, first.device, 1);
    second.home.sayUnseen();
    second.home.goOnUnseen();
    expect(second.state().step).toBe('overview');
    const third = await atCheck({}, first.device, 2);
    expect(third.state()).toMatchObject({ step: 'last-time', earlier: [{ concerns: [{ score: 8 }] }] });
  });

  it('asks the whole list again for another plan, and nothing about another patient', async () => {
    const first = await atCheck();
    first.home.setSign('calf');
    await settle();
    const other = { id: crypto.randomUUID(), patient: 'Slate Plover 9' };
    expect((await atCheck(other, first.device, 1)).state()).toMatchObject({ step: 'check', asked: 'all' });
  });

  it('keeps what was said where it is left in the middle', async () => {
    const { home, kept } = await atPain();
    home.setPainBefore(3);
    home.leave();
    const [session] = await kept();
    expect(session).toMatchObject({ painBefore: 3, sets: [] });
    expect(session!.endedAt).not.toBeNull();
  });
});

describe('the camera', () => {
  it('is explained in a sentence where it was refused, and asked for again', async () => {
    const { home, state, world } = await atCamera(await openFakeHome());
    world.cameraFault = new CameraProblem('refused');
    await home.openCamera();
    expect(state().camera).toMatchObject({ state: 'problem', kind: 'refused' });
    home.startExercise();
    expect(state().step).toBe('camera');
    world.cameraFault = null;
    await home.openCamera({ deviceId: 'cam-7' });
    expect(state().camera).toMatchObject({ state: 'on', isMirrored: true });
    expect(state().cameras).toHaveLength(1);
    expect(state().pace).toMatchObject({ state: 'known', hasFeedback: true });
  });

  const phoneVideo = (name = 'phone.mp4') => new File(['pictures'], name, { type: 'video/mp4' });

  it('can be replaced by videos from the device: each becomes the next set of the session', async () => {
    const { home, navigation, world, state, repository } = await atCamera(await openFakeHome());
    world.cameraFault = new CameraProblem('none');
    await home.openCamera();
    home.finishOwnRecordings();
    expect(state().step).toBe('camera');
    await home.openOwnRecording(phoneVideo());
    await settle();
    expect(navigation.screen()).toBe('home');
    await vi.waitFor(() =>
      expect(state().sets).toMatchObject([
        {
          result: { number: 1, counted: null, prescribed: 3 },
          found: 3,
          keeping: 'kept',
          numbers: 'careful',
        },
      ]),
    );
    await home.openOwnRecording(phoneVideo());
    await home.openOwnRecording(phoneVideo('one-too-many.mp4'));
    await settle();
    home.finishOwnRecordings();
    expect(state().step).toBe('after');
    home.setPainDuring(1, 2);
    await home.saveSession();
    const { sets } = (await repository.sessions.list()).found[0]!;
    expect(sets.map(({ number, painDuring }) => [number, painDuring])).toEqual([
      [1, null],
      [2, 2],
    ]);
    const { facts: kept, recording } = (await repository.recordings.find(sets[1]!.sessionId!))!;
    // Measured again, with the closer look.
    expect(recording.observed.closer).toBeDefined();
    expect(kept).toMatchObject({
      fromVideo: 'done',
      visitId: (await repository.sessions.list()).found[0]!.id,
    });
    expect(await (await repository.videos.read(kept.video!))!.text()).toBe('pictures');
    expect((await repository.interrupted()).found).toEqual([]);
  });

  it('keeps what such a video shows where there is no room for the video, and says so', async () => {
    const device = createTestDevice();
    const { home, state, repository } = await atCamera(await openFakeHome({ device }));
    device.videos.create = () => Promise.reject(storageProblem('full'));
    await home.openOwnRecording(phoneVideo());
    await settle();
    expect(state().sets).toMatchObject([{ found: 3, keeping: 'kept' }]);
    expect(state().sets[0]!.problem).toMatch(/storage is full/);
    const { facts: kept } = (await repository.recordings.find(state().sets[0]!.recordingId!))!;
    expect(kept.video).toBeNull();
  });

  it('explains in the session what is wrong with such a video', async () => {
    const { home, navigation, state } = await atCamera(await openFakeHome());
    await home.openOwnRecording(new File(['x'], 'bad.txt'));
    expect(state().problem?.sentence).toContain('not a video');
    expect(navigation.screen()).toBe('home');
  });

  it('may end in the middle of a set: what was done is kept, and the rest follows with the next camera', async () => {
    const { home, state, world, repository } = await atExercise(await openFakeHome());
    await world.until('working');
    await world.wait(8500);
    expect(state().guide?.count).toBe(2);
    world.camera!.unplug();
    await settle();
    expect(state()).toMatchObject({
      guide: { phase: 'paused', pauseReason: 'camera-ended' },
      camera: { state: 'problem' },
    });
    expect(state().sets).toMatchObject([
      { result: { counted: 2, cutShort: 'the camera stopped' }, found: 2, keeping: 'kept' },
    ]);
    expect((await repository.recordings.list()).found).toHaveLength(1);
    world.movesFromMs = null;
    await home.openCamera();
    home.press('resume');
    await world.until('working');
    await world.until('set-done');
    expect(state().sets).toHaveLength(2);
    expect(state().sets[1]).toMatchObject({ result: { prescribed: 1, counted: 1, number: 1 } });
  });

  it('pauses when the person leaves the picture, and continues when they are back', async () => {
    const { state, world } = await atExercise(await openFakeHome());
    await world.until('working');
    await world.wait(1000);
    world.isAway = true;
    await world.until('paused');
    expect(state().guide?.pauseReason).toBe('left-picture');
    expect(world.recorder.pauses).toBe(1);
    world.isAway = false;
    await world.until('working');
  });

  it('says of a camera that gives no pictures that it is the camera, lets it go, and keeps what was done', async () => {
    const { home, state, world } = await atExercise(await openFakeHome());
    await world.until('working');
    await world.wait(7000);
    for (let i = 0; i < 40 && world.phase() !== 'paused'; i++) await world.wait(100, false);
    expect(state().guide?.pauseReason).toBe('no-pictures');
    expect(state().camera.state).toBe('on');
    await world.wait(12_000, false);
    expect(state().camera).toMatchObject({ state: 'problem', kind: 'in-use' });
    expect(state().guide?.pauseReason).toBe('camera-ended');
    await settle();
    expect(state().sets).toMatchObject([{ result: { cutShort: 'the camera stopped' }, keeping: 'kept' }]);
    await home.openCamera();
    home.press('resume');
    await world.until('working');
  });

  it('says that a slow device does not count, and measures afterwards all the same', async () => {
    const opened = await openFakeHome();
    opened.world.check.decision = { model: 'lite', hasFeedback: false, sentence: 'Too slow to count along.' };
    const { home, state, world } = await atExercise(opened);
    await world.until('working');
    await world.wait(13_000);
    expect(state().guide?.count).toBeNull();
    home.press('end-set');
    await settle();
    expect(state().sets[0]).toMatchObject({ result: { counted: null, cutShort: null }, found: 3 });
  });

  it('restarts the tracker once, and reports when it fails again', async () => {
    const { state, world } = await atExercise(await openFakeHome());
    await world.until('working');
    world.trackerFault = new Error('the graphics card is gone');
    await world.wait(400);
    expect(world.trackersClosed).toBe(2);
    expect(state().camera).toMatchObject({ state: 'problem', kind: 'tracking' });
    expect(state().guide?.phase).toBe('paused');
  });
});

describe('stopping', () => {
  it('because of pain keeps what was done, says what the plan says, and asks how it was', async () => {
    const { home, state, world, repository } = await atExercise(await openFakeHome());
    const kept = async () => (await repository.sessions.list()).found[0]!;
    await world.until('working');
    await world.wait(5000);
    home.press('stop');
    await settle();
    expect(state().guide).toMatchObject({ phase: 'paused', pauseReason: 'stop' });
    // The tab may be closed before the reason is given.
    expect(await kept()).toMatchObject({ endedBecause: { reason: 'not-told' } });
    home.press('stop-pain');
    await settle();
    expect(state().guide?.phase).toBe('stopped');
    expect(world.sound.said.at(-1)?.line).toContain('Your therapist says: Stop and call the practice.');
    expect(world.camera?.isOpen).toBe(false);
    expect(await kept()).toMatchObject({
      endedAt: null,
      painLimit: 4,
      endedBecause: { reason: 'pain', fell: null },
      sets: [{ cutShort: 'pain' }],
    });
    home.finishExercise();
    home.setPainAfter(7);
    expect(state().painWarning).toMatchObject({ when: 'after', score: 7, mayGoOn: false });
    await settle();
    expect(await kept()).toMatchObject({ painAfter: 7, endedAt: null });
    await home.saveSession();
    const session = await kept();
    expect(session).toMatchObject({ painAfter: 7, sets: [{ cutShort: 'pain', number: 1 }] });
    expect(await repository.recordings.find(session.sets[0]!.sessionId!)).not.toBeNull();
    expect(concernsNow(state())).toEqual([{ kind: 'pain', score: 7 }]);
  });

  it.each([
    ['stop-gave-way', 'gave-way', 'Sit down and call the practice.'],
    ['stop-locked', 'locked', 'Sit down and call the practice.'],
    ['stop-dizzy', 'dizzy', 'stay seated until it has passed'],
    ['stop-other', 'other', 'is saved'],
  ] as const)('keeps the reason of %s, and whether somebody fell', async (press, reason, says) => {
    const { home, world, repository } = await atExercise(await openFakeHome());
    await world.until('working');
    home.press('stop');
    home.press(press);
    await settle();
    expect(world.sound.said.at(-1)?.line).toContain(says);
    home.finishExercise();
    home.setFell(true);
    await settle();
    expect((await repository.sessions.list()).found).toMatchObject([
      { endedBecause: { reason, fell: true } },
    ]);
  });

  it('carries on where the stop was a mistake, and keeps nothing of it', async () => {
    const { home, state, world, repository } = await atExercise(await openFakeHome());
    await world.until('working');
    home.press('stop');
    home.press('resume');
    await world.until('working');
    await settle();
    expect(state().endedBecause).toBeNull();
    expect((await repository.sessions.list()).found).toMatchObject([{ endedBecause: null }]);
  });

  const warned = async (change: Partial<PlanDocument>) => {
    const opened = await atExercise(await openFakeHome(), { ...plan, ...change });
    await opened.world.until('set-done');
    opened.home.setPainDuring(0, 6);
    await opened.world.until('paused');
    return opened;
  };

  it('is asked for in a rest where the set hurt beyond the limit; going on is not offered', async () => {
    const { home, state } = await warned({});
    expect(state().painWarning).toMatchObject({ when: 'during', score: 6, mayGoOn: false });
    home.press('resume');
    expect(state().guide?.phase).toBe('paused');
    home.goOnInSpiteOfPain();
    expect(state()).toMatchObject({ guide: { phase: 'paused' }, wentOnAbove: [] });
    home.setPainDuring(0, 2); // It was a slip of the finger.
    expect(state().painWarning).toBeNull();
    home.press('resume');
    expect(state().guide?.phase).toBe('resting');
  });

  it('can be overruled where the plan allows it, below strong pain, and that is written down', async () => {
    const { home, state, repository } = await warned({ mayGoOnAbove: true });
    home.goOnInSpiteOfPain();
    expect(state()).toMatchObject({ guide: { phase: 'resting' }, painWarning: null });
    await settle();
    const went = [{ when: 'during', score: 6, limit: 4 }];
    expect((await repository.sessions.list()).found).toMatchObject([{ wentOnAbove: went }]);
    home.setPainDuring(0, 7);
    expect(state().guide?.phase).toBe('paused');
    home.goOnInSpiteOfPain();
    expect(state().guide?.phase).toBe('paused');
  });

  it('pauses with the page hidden', async () => {
    const { home, state, world } = await atExercise(await openFakeHome());
    await world.until('working');
    world.showPage(false);
    expect(state().guide).toMatchObject({ phase: 'paused', pauseReason: 'page-hidden' });
    world.showPage(true);
    home.press('resume');
    await world.until('working');
  });

  it('keeps what is answered while it is answered, before anything is saved', async () => {
    const { home, state, world, repository } = await atExercise(await openFakeHome());
    await world.until('set-done');
    home.press('end');
    home.finishExercise();
    await settle();
    home.setPainAfter(4);
    home.setEffort(6);
    for (const remark of ['A', 'A chair', 'A chair that moved.']) home.setRemark(remark);
    await settle();
    expect(state().step).toBe('after');
    const [kept] = (await repository.sessions.list()).found;
    expect(kept).toMatchObject({ painAfter: 4, effort: 6, remark: 'A chair that moved.', endedAt: null });
    home.setRemark('A chair that moved a little.');
    await home.saveSession();
    await settle();
    const [saved] = (await repository.sessions.list()).found;
    expect(saved!.remark).toBe('A chair that moved a little.');
    expect(saved!.endedAt).not.toBeNull();
  });

  it('can be saved where the date of the device was set back in the middle of it', async () => {
    let setBackMs = 0;
    const { home, state, world, repository } = await atExercise(
      await openFakeHome({}, (adapters) => {
        const { now } = adapters;
        adapters.now = () => new Date(now().getTime() - setBackMs);
      }),
    );
    await world.until('working');
    setBackMs = 2 * 86_400_000;
    await world.until('set-done');
    home.press('end');
    home.finishExercise();
    await settle();
    await home.saveSession();
    expect(state()).toMatchObject({ step: 'summary', saving: 'saved', problem: null });
    const [kept] = (await repository.sessions.list()).found;
    const lastedMs = Date.parse(kept!.endedAt!) - Date.parse(kept!.startedAt);
    expect(lastedMs).toBeGreaterThan(0);
    expect(lastedMs).toBeLessThan(600_000);
  });

  it('keeps the session so far when it is left', async () => {
    const { home, navigation, state, world, repository } = await atExercise(await openFakeHome());
    await world.until('working');
    await world.wait(5000);
    home.leave();
    expect(navigation.screen()).toBe('start');
    await settle();
    expect(state()).toMatchObject({ step: 'plan', sets: [] });
    expect(world.camera?.isOpen).toBe(false);
    expect((await repository.sessions.list()).found).toMatchObject([{ sets: [{ cutShort: 'ended early' }] }]);
    expect((await repository.sessions.list()).found[0]!.endedAt).not.toBeNull();
  });
});

describe('storage', () => {
  it('that is refused is explained, and work continues in memory', async () => {
    const { home, state, world } = await atExercise(await openFakeHome({ lasting: false }));
    expect(state().storage).toMatchObject({ state: 'memory' });
    expect((state().storage as { sentence: string }).sentence).toContain('refuses');
    await world.until('resting');
    expect(state().sets[0]).toMatchObject({ keeping: 'memory', found: 3 });
    home.press('end');
    await settle();
    home.finishExercise();
    await home.saveSession();
    expect(state()).toMatchObject({ step: 'summary', saving: 'saved' });
    home.saveSetFile(0);
    expect(parseRecording(world.saved[0]!.text).derived.repetitions).not.toEqual([]);
  });

  it('that can’t be opened blocks with a sentence', async () => {
    const { home, state } = await openFakeHome({}, (adapters) => {
      adapters.openRepository = () => Promise.reject(new Error('in the way'));
    });
    expect(state().storage.state).toBe('blocked');
    await home.openPlanFile(planFile());
    expect(state().step).toBe('plan');
    expect(state().problem?.sentence).toContain('in the way');
  });

  it('that fills up in the middle of a set loses the video alone', async () => {
    const { state, world } = await atExercise(await openFakeHome());
    await world.until('working');
    world.failRecorder();
    expect(state().problem?.sentence).toContain('The disk is full.');
    await world.until('set-done');
    await settle();
    expect(state().sets[0]).toMatchObject({ keeping: 'kept', found: 3 });
    expect(state().sets[0]!.problem).toContain('The disk is full.');
  });

  it('without room for a set keeps it in memory, where it can be saved as a file', async () => {
    const { home, state, world } = await atExercise(
      await openFakeHome({}, (_, { repository }) => {
        repository.beginSet = () => Promise.reject(new Error('no room'));
      }),
    );
    await world.until('set-done');
    await settle();
    expect(state().sets[0]).toMatchObject({ keeping: 'memory', found: 3 });
    expect(state().problem?.sentence).toContain('no room');
    home.saveSetFile(0);
    expect(world.saved[0]!.fileName).toMatch(/^overfoot-session-2026-05-06-.*\.json$/);
  });
});

describe('an interrupted set', () => {
  async function interrupted() {
    const device = createTestDevice();
    const before = await atExercise(await openFakeHome({ device }));
    await before.world.until('working');
    await before.world.wait(9000);
    before.world.showPage(false); // As a phone does before it ends a page.
    await settle();
    // The tab is gone: nothing of it is heard any more, and another one opens.
    const after = await openFakeHome({ device }, (_, world) => (world.idsFrom = 1));
    await settle();
    return after;
  }

  it('is offered at the next start, kept in its session, and later measured from its video', async () => {
    const { home, state, repository } = await interrupted();
    expect(state().interrupted).toMatchObject([
      { task: 'split-stance-sit-to-stand', side: 'right', state: 'offered' },
    ]);
    expect(state().interrupted[0]!.seconds).toBeGreaterThan(15);
    const { id } = state().interrupted[0]!;
    await home.recoverInterrupted(id);
    expect(state()).toMatchObject({ interrupted: [], problem: null });
    expect((await repository.sessions.list()).found).toMatchObject([{ sets: [{ sessionId: id }] }]);
    expect(await repository.recordings.find(id)).not.toBeNull();
  });

  it('is kept where the person goes on on the same day, with the repetitions that are missing', async () => {
    const { home, state, repository } = await interrupted();
    expect(state().today.left).toMatchObject({ done: 0, of: 3 });
    await home.continueToday();
    expect(state()).toMatchObject({ step: 'check', asked: 'new', interrupted: [] });
    const [kept] = (await repository.sessions.list()).found;
    const recording = await repository.recordings.find(kept!.sets[0]!.sessionId!);
    const found = recording!.recording.derived.repetitions.filter(
      ({ completeness }) => completeness === 'complete',
    ).length;
    expect(found).toBeGreaterThan(0);
    expect(found).toBeLessThan(3);
    expect(state().steps[0]).toMatchObject({ number: 1, item: { repetitions: 3 - found } });
  });

  it('can be dropped, and the dropping undone until the next set begins', async () => {
    const { home, state, repository } = await interrupted();
    const { id } = state().interrupted[0]!;
    home.dropInterrupted(id);
    expect(state().interrupted[0]!.state).toBe('dropped');
    home.undoDrop(id);
    expect(state().interrupted[0]!.state).toBe('offered');
    home.dropInterrupted(id);
    home.leave();
    await settle();
    expect(state().interrupted).toEqual([]);
    expect((await repository.interrupted()).found).toEqual([]);
  });
});

describe('afterwards', () => {
  async function atSummary() {
    const items = [smallItem({ sets: 1, repetitions: 3 })];
    const opened = await atExercise(await openFakeHome(), { ...plan, items });
    await opened.world.until('all-done');
    opened.home.finishExercise();
    return opened;
  }

  /** Saves the session while the careful measuring is held back; `measure` lets it go. */
  async function saveUnmeasured() {
    const opened = await atSummary();
    let measure = () => {};
    const held = new Promise<void>((resolve) => (measure = resolve));
    opened.reviewWorld.beforeAnswer = () => held;
    await opened.home.saveSession();
    return { ...opened, measure: () => measure() };
  }

  it('sets are measured again from their video, with progress, once nothing is being recorded', async () => {
    const { home, state } = await atSummary();
    expect(state().sets[0]!.numbers).toBe('coming');
    await home.saveSession();
    await careful(state);
    expect(state().sets[0]).toMatchObject({ numbers: 'careful', found: 3 });
    expect(state().background).toMatchObject({ waiting: 0, current: null, problems: [] });
  });

  it('nothing is shown before the numbers are final, and nothing changes then', async () => {
    const { home, state, measure } = await saveUnmeasured();
    await settle();
    const summary = () => partOf(home.store.getState(), 'summary');
    expect(summary()).toMatchObject({ saving: 'saved', told: null, replays: [] });
    expect(measuredShare(state().sets, state().background)).toBe(0);
    measure();
    await careful(state);
    await settle();
    expect(summary().told).toMatchObject([{ numbers: 'careful', found: 3 }]);
    const { told } = summary();
    home.showFirstNumbers();
    expect(summary().told).toBe(told);
  });

  it('the first numbers are told to those who don’t want to wait, and stay while better ones come', async () => {
    const { home, state, measure } = await saveUnmeasured();
    await settle();
    home.showFirstNumbers();
    const summary = () => partOf(home.store.getState(), 'summary');
    const { told } = summary();
    expect(told).toMatchObject([{ numbers: 'coming', found: 3 }]);
    measure();
    await careful(state);
    await settle();
    expect(state().sets[0]!.numbers).toBe('careful');
    expect(summary().told).toBe(told);
  });

  it('the first numbers are told where the video can’t be measured', async () => {
    const { home, state, reviewWorld } = await atSummary();
    reviewWorld.beforeAnswer = () => Promise.reject(new Error('The network broke down.'));
    await home.saveSession();
    await careful(state);
    await settle();
    expect(partOf(home.store.getState(), 'summary').told).toMatchObject([{ numbers: 'first', found: 3 }]);
    expect(state().background.problems).toHaveLength(1);
  });

  it('the result of somebody who left early is on Today once it is there', async () => {
    const { home, state, measure } = await saveUnmeasured();
    home.startOver();
    await vi.waitFor(() => expect(state().today.last).toMatchObject({ sets: 1, inLine: null }));
    measure();
    await vi.waitFor(() => expect(state().today.last?.inLine).toMatchObject({ of: 3 }), 30_000);
  });

  it('the best repetition and the one nearest to the edge can be looked at, with their video', async () => {
    const { home, state } = await atSummary();
    await home.saveSession();
    await careful(state);
    await settle();
    const summary = () => partOf(home.store.getState(), 'summary');
    expect(summary().replays.map(({ kind, place }) => [kind, place])).toEqual([
      ['best', 1],
      ['edge', 3],
    ]);
    await home.showReplay();
    const { page, shown } = summary();
    expect(page).toBe('replay');
    const { recordingId } = state().sets[0]!;
    for (const { recording, fromMs, toMs, stillMs, ...replay } of shown) {
      expect(replay.recordingId).toBe(recordingId);
      expect(await recording.video?.text()).toBe('moving pictures');
      expect(fromMs).toBeLessThan(stillMs);
      expect(stillMs).toBeLessThan(toMs);
      expect(toMs).toBeLessThanOrEqual(recording.track.timesMs.at(-1)!);
    }
    home.back();
    expect(summary()).toMatchObject({ page: 'result', saving: 'saved' });
    expect(summary().told).not.toBeNull();
  });

  it('nothing can be looked at where no video is kept', async () => {
    const { home, state, repository } = await atSummary();
    await settle();
    const { findHead } = repository.recordings;
    repository.recordings.findHead = async (id) => {
      const found = await findHead(id);
      return found && { ...found, facts: { ...found.facts, video: null } };
    };
    await home.saveSession();
    await careful(state);
    await settle();
    const summary = partOf(home.store.getState(), 'summary');
    expect(summary.told).toHaveLength(1);
    expect(summary.replays).toEqual([]);
    await home.showReplay();
    expect(partOf(home.store.getState(), 'summary').page).toBe('result');
  });

  it('measuring waits while a camera is on, and continues when it is off', async () => {
    const { home, state } = await atSummary();
    await home.saveSession();
    home.startOver();
    await atCamera({ home, state } as Opened);
    await home.openCamera();
    expect(state().background.isPaused).toBe(true);
    home.back();
    expect(state()).toMatchObject({ step: 'pain-before', background: { isPaused: false } });
  });

  it('a set can be discarded, and the discarding undone until it is saved', async () => {
    const { home, state, repository } = await atSummary();
    await settle();
    home.discardSet(0);
    home.undoDiscard(0);
    home.discardSet(0);
    await home.saveSession();
    expect((await repository.recordings.list()).found).toEqual([]);
    expect((await repository.sessions.list()).found[0]!.sets).toEqual([]);
    home.undoDiscard(0);
    expect(state().sets[0]!.isDiscarded).toBe(true);
  });

  it('pain can be changed until it is saved', async () => {
    const { home, state } = await atSummary();
    home.setPainBefore(4);
    home.setPainAfter(5);
    home.setPainAfter(2);
    expect(state()).toMatchObject({ painBefore: 4, painAfter: 2, painWarning: null });
    await home.saveSession();
    home.setPainAfter(9);
    expect(state().painAfter).toBe(2);
  });

  it('a session that can’t be saved is reported, and saving is tried again', async () => {
    const { home, state, repository } = await atSummary();
    await settle();
    const { save } = repository.sessions;
    repository.sessions.save = () => Promise.reject(new Error('no room'));
    await home.saveSession();
    expect(state()).toMatchObject({ saving: 'failed', step: 'summary' });
    expect(state().problem?.sentence).toContain('no room');
    repository.sessions.save = save;
    await home.saveSession();
    expect(state()).toMatchObject({ saving: 'saved', problem: null });
  });
});
