import { describe, expect, it, vi } from 'vitest';
import { kneeDirection } from '#core/scoring/deciding';
import { CameraProblem } from '#device/camera/cameraProblem';
import { storageProblem } from '#device/storage/storageProblem';
import { parseRecording } from '#documents/recording/parseRecording';
import { createTestDevice } from '../../../../support/openTestRepository';
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

describe('a home session', () => {
  it('goes from the plan to the summary, with counts that are those found afterwards', async () => {
    const opened = await openFakeHome();
    const { home, world, state, repository } = await atExercise(opened);
    await world.until('set-done');
    expect(state().sets[0]).toMatchObject({
      result: { counted: 3, prescribed: 3, cutShort: null },
      found: 3,
      keeping: 'kept',
      isFromVideo: false,
    });
    expect(state().heard.map((heard) => heard?.verdict)).toEqual(
      state().sets[0]!.judgements.map(({ verdict }) => verdict),
    );
    const last = state().sets[0]!.judgements.at(-1)!;
    expect(last.verdict).toBe('out-of-line');
    expect(kneeDirection(last)).toBe('inward');
    expect(state().sets[0]!.summary?.practise).toContain('inward');
    await world.until('resting');
    home.setPainDuring(0, 3);
    await world.until('set-done');
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
      ['split-stance-sit-to-stand', 2, null, null],
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
    expect(said.slice(last - 2, last + 2)).toEqual([
      'One. Two more.',
      'Two. One more.',
      'Three. That was the last one.',
      'Let the knee go out a little, over the foot.',
    ]);
    expect(world.sound.tones.filter((tone) => tone === 'outside')).toHaveLength(1);
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

  it('waits until it is confirmed and no red flag is set', async () => {
    const { home, state } = await openFakeHome();
    await home.openPlanFile(planFile());
    home.confirm();
    expect(state().step).toBe('overview');
    home.setConfirmed(true);
    home.setRedFlag('calf');
    home.confirm();
    expect(state().step).toBe('overview');
    home.setRedFlag(null);
    home.confirm();
    expect(state().step).toBe('pain-before');
  });

  it('does not go on above the pain limit until the person says once more that the therapist wants it', async () => {
    const { home, state } = await openFakeHome();
    await home.openPlanFile(planFile());
    home.setConfirmed(true);
    home.confirm();
    home.goOnFromPain();
    expect(state().step).toBe('pain-before');
    home.setPainBefore(5);
    expect(state().painWarning).toMatchObject({ when: 'before', score: 5 });
    expect(state().painWarning?.advice).toContain('Stop and call the practice.');
    home.goOnFromPain();
    expect(state().step).toBe('pain-before');
    home.setToldToGoOn(true);
    home.setPainBefore(6); // A new score is a new question.
    home.goOnFromPain();
    expect(state().step).toBe('pain-before');
    home.setToldToGoOn(true);
    home.goOnFromPain();
    expect(state()).toMatchObject({ step: 'camera', painBefore: 6 });
  });

  it('ends before it began where pain is too much', async () => {
    const { home, state } = await openFakeHome();
    await home.openPlanFile(planFile());
    home.setConfirmed(true);
    home.confirm();
    home.setPainBefore(9);
    home.stopBeforeStart();
    expect(state()).toMatchObject({ step: 'plan', plan: null, painBefore: null, painWarning: null });
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
    home.startFree({ task: 'single-leg-squat', side: 'left', sets: 2, repetitions: 4 });
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
    home.setPainBefore(0);
    home.goOnFromPain();
    expect(state().step).toBe('exercise');
    await world.until('all-done');
    expect(state().sets).toMatchObject([{ keeping: 'none', found: null, result: { heldMs: 4000 } }]);
    expect(world.camera).toBeNull();
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
    expect(state().sets).toMatchObject([
      { result: { number: 1, counted: null, prescribed: 3 }, found: 3, keeping: 'kept', isFromVideo: true },
    ]);
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
    const { facts: kept } = (await repository.recordings.find(sets[1]!.sessionId!))!;
    expect(kept).toMatchObject({
      fromVideo: 'done',
      visitId: (await repository.sessions.list()).found[0]!.id,
    });
    expect(await (await repository.videos.read(kept.video!))!.text()).toBe('pictures');
    expect((await repository.interrupted()).found).toEqual([]);
    await home.reviewSet(1);
    expect(navigation.store.getState()).toMatchObject({ screen: 'review', from: 'home' });
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
    const { home, review, navigation, state } = await atCamera(await openFakeHome());
    await home.openOwnRecording(new File(['x'], 'bad.txt'));
    expect(state().problem?.sentence).toContain('not a video');
    expect(navigation.screen()).toBe('home');
    expect(review.store.getState().problem).toBeNull();
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

  it('counts a camera that gives no pictures as a person who left', async () => {
    const { state, world } = await atExercise(await openFakeHome());
    await world.until('working');
    for (let i = 0; i < 40 && world.phase() !== 'paused'; i++) await world.wait(100, false);
    expect(state().guide?.pauseReason).toBe('left-picture');
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
    await world.until('working');
    await world.wait(5000);
    home.press('stop-pain');
    await settle();
    expect(state().guide?.phase).toBe('stopped');
    expect(world.sound.said.at(-1)?.line).toContain('Stop and call the practice.');
    expect(world.camera?.isOpen).toBe(false);
    home.finishExercise();
    home.setPainAfter(7);
    expect(state().painWarning).toMatchObject({ when: 'after', score: 7 });
    await home.saveSession();
    const [session] = (await repository.sessions.list()).found;
    expect(session).toMatchObject({ painAfter: 7, sets: [{ cutShort: 'pain', number: 1 }] });
    expect(await repository.recordings.find(session!.sets[0]!.sessionId!)).not.toBeNull();
  });

  it('is asked for in a rest where the set hurt beyond the limit', async () => {
    const { home, state, world } = await atExercise(await openFakeHome());
    await world.until('set-done');
    home.setPainDuring(0, 8);
    expect(state().painWarning).toMatchObject({ when: 'during', score: 8 });
    await world.until('paused');
    home.press('resume');
    expect(state().guide?.phase).toBe('paused');
    home.goOnInSpiteOfPain();
    expect(state()).toMatchObject({ guide: { phase: 'resting' }, painWarning: null });
    home.setPainDuring(0, 9);
    expect(state().guide?.phase).toBe('paused');
    home.setPainDuring(0, 2); // It was a slip of the finger.
    expect(state().painWarning).toBeNull();
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

  it('sets are measured again from their video, with progress, once nothing is being recorded', async () => {
    const { home, state } = await atSummary();
    expect(state().sets[0]!.isFromVideo).toBe(false);
    await home.saveSession();
    for (let i = 0; i < 200 && !state().sets[0]!.isFromVideo; i++) await settle();
    expect(state().sets[0]).toMatchObject({ isFromVideo: true, found: 3 });
    expect(state().background).toMatchObject({ waiting: 0, share: null, problems: [] });
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

  it('the review of a set opens with its video and leads back', async () => {
    const { home, review, navigation } = await atSummary();
    await home.saveSession();
    await home.reviewSet(0);
    expect(navigation.store.getState()).toMatchObject({ screen: 'review', from: 'home' });
    expect(review.store.getState().recording).toMatchObject({ origin: 'session' });
    expect(review.store.getState().recording!.video).not.toBeNull();
    navigation.returnTo('home');
    expect(navigation.store.getState()).toMatchObject({ screen: 'home', from: 'start' });
  });

  it('what is set in the review of a set is kept, and the summary follows', async () => {
    const { home, review, state, repository } = await atSummary();
    await home.saveSession();
    await home.reviewSet(0);
    const { found, recordingId } = state().sets[0]!;
    const { repetitions, timesMs } = review.store.getState().recording!.measurement;
    const { loadedFrom, loadedTo } = repetitions[0]!;
    const atMs = (timesMs[loadedFrom]! + timesMs[loadedTo]!) / 2;
    review.correct({ kind: 'exclude', atMs, reason: 'A trial.' });
    await vi.waitFor(() => expect(review.store.getState().keeping).toEqual({ state: 'kept' }));
    const kept = (await repository.recordings.find(recordingId!))!;
    expect(kept.recording.corrections).toMatchObject([{ change: { kind: 'exclude', reason: 'A trial.' } }]);
    expect(state().sets[0]!.found).toBe(found! - 1);
    await home.reviewSet(0);
    expect(review.store.getState().recording!.excluded[0]).toBe('A trial.');
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
