import { describe, expect, it, vi } from 'vitest';
import { defaultLimits, withLimit } from '#core/protocol/limits';
import { parseRecording } from '#documents/recording/parseRecording';
import { createReview } from '#features/review/store/createReview';
import { judgeAll } from '#shell/tracking/shownRecording';
import { facts, fakeAdapters, film, recordingText } from '../../../../support/fakeAdapters';

function start() {
  const { adapters, world, tracking, navigation } = fakeAdapters();
  const review = createReview(adapters);
  const trackingState = tracking.store.getState;
  return {
    review,
    tracking,
    world,
    adapters,
    navigation,
    /** What is shown, and where. */
    state: () => ({ ...review.store.getState(), screen: navigation.screen() }),
    trackingState,
  };
}

const video = new File(['x'], 'stairs.mp4', { type: 'video/mp4' });
const recording = new File([recordingText], 'any.json', { type: 'application/json' });
const never = () => new Promise<void>(() => undefined);

async function tracked() {
  const started = start();
  await started.review.openFile(video);
  started.review.setSide('right');
  await started.review.startTracking();
  return started;
}

describe('openFile(file)', () => {
  it('accepts a video and reports its facts', async () => {
    const { review, state, world } = start();
    await review.openFile(video);
    expect(state()).toMatchObject({ chosen: facts, opening: null, problem: null, screen: 'start' });
    expect(world.sourcesOpen).toBe(0);
  });

  it('explains why a file is not a video, and accepts the next one', async () => {
    const { review, state } = start();
    await review.openFile(new File(['x'], 'bad.txt'));
    expect(state().problem?.sentence).toContain('"bad.txt" is not a video');
    expect(state()).toMatchObject({ chosen: null, opening: null, screen: 'start' });
    await review.openFile(video);
    expect(state()).toMatchObject({ chosen: facts, problem: null });
  });

  it('opens a recording document at once, measured afresh, without a video', async () => {
    const { review, state } = start();
    await review.openFile(new File([recordingText], 'overfoot-session-2026-02-03.json'));
    expect(state()).toMatchObject({ screen: 'review', setup: { side: 'right' } });
    expect(state().limits.present['knee-angle'].most).toBe(12);
    expect(review.store.getState().recording).toMatchObject({ origin: 'session', video: null });
    expect(state().judgements).toHaveLength(3);
  });

  it('reports what is wrong with a damaged recording document', async () => {
    const { review, state } = start();
    await review.openFile(new File([recordingText.slice(0, 500)], 'cut.json'));
    expect(state().screen).toBe('start');
    expect(state().problem?.sentence).toContain('not JSON');
  });

  it('keeps the file that was chosen last when an earlier one opens late', async () => {
    const { review, state, adapters } = start();
    let openLate: () => void = () => undefined;
    const open = adapters.openFrameSource;
    adapters.openFrameSource = async (file) => {
      if (file.name === 'slow.mp4') await new Promise<void>((resolve) => (openLate = resolve));
      const source = await open(file);
      return { ...source, facts: { ...source.facts, fileName: file.name } };
    };
    const slow = review.openFile(new File(['x'], 'slow.mp4'));
    await review.openFile(new File(['x'], 'quick.mp4'));
    openLate();
    await slow;
    expect(state().chosen?.fileName).toBe('quick.mp4');
  });
});

describe('openExample()', () => {
  it('shows the recorded joints, measured now, with the video', async () => {
    const { review, state } = start();
    await review.openExample();
    expect(state()).toMatchObject({ screen: 'review', opening: null });
    expect(review.store.getState().recording).toMatchObject({
      origin: 'example',
      note: 'Invented: a made-up person.',
    });
    expect(review.store.getState().recording?.video?.name).toBe('example.mp4');
  });

  it('reports a missing example', async () => {
    const { review, state, adapters } = start();
    adapters.fetchExample = () => Promise.reject(new Error('the json file is missing'));
    await review.openExample();
    expect(state().problem?.sentence).toContain('the json file is missing');
    expect(state()).toMatchObject({ screen: 'start', opening: null });
  });
});

describe('startTracking()', () => {
  it('does nothing before a video and a side are chosen', async () => {
    const { review, state, world } = start();
    await review.startTracking();
    await review.openFile(video);
    await review.startTracking();
    expect(state().screen).toBe('start');
    expect(world.trackersStarted).toBe(0);
  });

  it('goes from video to judged repetitions', async () => {
    const { state, review, world } = await tracked();
    expect(state()).toMatchObject({ screen: 'review', problem: null });
    const { measurement } = review.store.getState().recording!;
    expect(state().judgements).toEqual(judgeAll(measurement, defaultLimits));
    expect(state().judgements).toHaveLength(3);
    expect(state().judgements[2]!.verdict).toBe('out-of-line');
    expect(review.store.getState().recording?.model).toMatchObject({
      size: 'full',
      weights: 'made-up 4.5.6',
      backend: 'wasm',
    });
    expect(review.store.getState().recording?.track.timesMs).toHaveLength(film.track.timesMs.length);
    expect(world.sourcesOpen).toBe(0);
  });

  it('reports its progress, and which device it runs on', async () => {
    const { review, tracking, trackingState } = start();
    await review.openFile(video);
    review.setSide('right');
    const seen: number[] = [];
    const stop = tracking.store.subscribe(
      ({ progress }) => progress !== null && seen.push(progress.framesDone),
    );
    await review.startTracking();
    stop();
    expect(Math.max(...seen)).toBe(film.track.timesMs.length);
    expect(trackingState().device).toEqual({
      state: 'ready',
      device: { backend: 'wasm', threads: 2 },
      model: 'full',
    });
  });

  it('goes back to where it started and says why when the tracker fails; the next try gets a new tracker', async () => {
    const { review, state, trackingState, world } = start();
    await review.openFile(video);
    review.setSide('right');
    world.beforeAnswer = () => Promise.reject(new Error('out of memory'));
    await review.startTracking();
    expect(state()).toMatchObject({ screen: 'start', chosen: facts });
    expect(trackingState()).toMatchObject({ isTracking: false, progress: null });
    expect(state().problem?.sentence).toContain('out of memory');
    world.beforeAnswer = () => Promise.resolve();
    await review.startTracking();
    expect(state()).toMatchObject({ screen: 'review', problem: null });
    expect(world).toMatchObject({ trackersStarted: 2, trackersClosed: 1, sourcesOpen: 0 });
  });
});

describe('cancel()', () => {
  it('stops tracking at once, keeps the chosen video, and shows no problem', async () => {
    const { review, tracking, state, trackingState, world } = start();
    await review.openFile(video);
    review.setSide('right');
    world.beforeAnswer = (frame) => (frame < 5 ? Promise.resolve() : never());
    const started = review.startTracking();
    await vi.waitFor(() => expect(trackingState().progress?.framesDone).toBe(5));
    tracking.cancel();
    expect(state()).toMatchObject({ screen: 'start', chosen: facts, problem: null });
    expect(trackingState()).toMatchObject({ isTracking: false, progress: null });
    expect(world.trackersClosed).toBe(1);
    void started;
  });

  it('stops while the model is still loading', async () => {
    const { review, tracking, state, trackingState, world } = start();
    await review.openFile(video);
    review.setSide('right');
    world.beforeLoad = never;
    const started = review.startTracking();
    await vi.waitFor(() => expect(trackingState().device.state).toBe('starting'));
    tracking.cancel();
    await started;
    expect(state()).toMatchObject({ screen: 'start', problem: null });
    expect(world.sourcesOpen).toBe(0);
  });

  it('leaves the recording that was there before', async () => {
    const { review, tracking, state, trackingState, world } = start();
    await review.openExample();
    const before = review.store.getState().recording;
    world.beforeAnswer = never;
    void review.trackAgain();
    await vi.waitFor(() => expect(trackingState().device.state).toBe('ready'));
    tracking.cancel();
    expect(state().screen).toBe('review');
    expect(review.store.getState().recording).toBe(before);
  });
});

describe('setBodyHeight(bodyHeightCm)', () => {
  it('applies to the next recording and to the one on screen, and can be undone', async () => {
    const { review } = await tracked();
    review.setBodyHeight(168);
    expect(review.store.getState().recording!.measurement.setup.bodyHeightCm).toBe(168);
    review.setBodyHeight(undefined);
    expect(review.store.getState().recording!.measurement.setup.bodyHeightCm).toBeUndefined();
  });
});

describe('setSide(side), setTask(task)', () => {
  it('measure the kept joints again without tracking again', async () => {
    const { review, state, world } = await tracked();
    const frames = world.framesEstimated;
    const before = review.store.getState().recording;
    review.setSide('left');
    expect(review.store.getState().recording?.measurement.setup.side).toBe('left');
    expect(review.store.getState().recording?.track).toBe(before?.track);
    expect(state().judgements).toHaveLength(
      review.store.getState().recording!.measurement.repetitions.length,
    );
    expect(review.store.getState().recording?.measurement.notes).toContainEqual({
      kind: 'side-doubtful',
      side: 'left',
    });
    review.setTask('single-leg-squat');
    expect(review.store.getState().recording?.measurement.setup.task).toBe('single-leg-squat');
    expect(world.framesEstimated).toBe(frames);
  });

  it('leave a kept recording alone while the next one is set up', async () => {
    const { navigation, review } = await tracked();
    void navigation.show('start');
    const before = review.store.getState().recording;
    review.setSide('left');
    expect(review.store.getState().recording).toBe(before);
    expect(before?.measurement.setup.side).toBe('right');
  });
});

describe('moveLimits(limits), endLimitMove(), undo(), putLimits(limits)', () => {
  const verdicts = (state: ReturnType<typeof start>['state']) =>
    state().judgements.map(({ verdict }) => verdict);

  it('judge again at once and count the verdicts that changed since the move began', async () => {
    const { review, state } = await tracked();
    const before = verdicts(state);
    review.moveLimits(withLimit(state().limits.present, 'knee-angle', 'most', 25));
    review.moveLimits(withLimit(state().limits.present, 'knee-angle', 'most', 30));
    review.endLimitMove();
    const after = verdicts(state);
    expect(after[2]).not.toBe(before[2]);
    expect(state().judgements).toEqual(
      judgeAll(review.store.getState().recording!.measurement, state().limits.present),
    );
    const changed = after.filter((verdict, index) => verdict !== before[index]).length;
    expect(state().changedVerdicts).toBe(changed);
    review.undo();
    expect(verdicts(state)).toEqual(before);
    expect(state().limits.present['knee-angle'].most).toBe(10);
    expect(state().changedVerdicts).toBe(changed);
  });

  it('judge by limits of other measures as well, and undo them', async () => {
    const { review, state } = await tracked();
    const before = verdicts(state);
    const { present } = state().limits;
    const depths = review.store
      .getState()
      .recording!.measurement.repetitions.map(({ ranges }) => ranges.depth.max!);
    const shallow = Math.min(...depths.map(({ value, band }) => value - 2 * band));
    review.putLimits(withLimit(present, 'depth', 'most', shallow));
    expect(verdicts(state)).toEqual(before.map(() => 'out-of-line'));
    expect(state().changedVerdicts).toBe(before.filter((verdict) => verdict !== 'out-of-line').length);
    expect(state().entries.limitsSet.at(-1)!.limits.depth).toEqual({ most: shallow });
    review.undo();
    expect(verdicts(state)).toEqual(before);
    expect(state().limits.present).toEqual(present);
  });

  it('restore the defaults, which can be undone as well', async () => {
    const { review, state } = await tracked();
    review.moveLimits(withLimit(state().limits.present, 'knee-angle', 'least', -4));
    review.endLimitMove();
    review.putLimits(defaultLimits);
    expect(state().limits.present).toEqual({ 'knee-angle': { least: -10, most: 10 } });
    review.undo();
    expect(state().limits.present).toEqual({ 'knee-angle': { least: -4, most: 10 } });
  });

  it('change nothing where there is nothing to undo', async () => {
    const { review, state } = await tracked();
    const before = state().limits;
    review.undo();
    expect(state().limits).toBe(before);
  });
});

describe('saveRecording()', () => {
  it('saves a document that reads back, with the limits in force and nobody’s name', async () => {
    const { review, world } = await tracked();
    review.moveLimits(withLimit(review.store.getState().limits.present, 'knee-angle', 'most', 14));
    review.endLimitMove();
    review.saveRecording();
    const [{ fileName, text }] = world.saved as [{ fileName: string; text: string }];
    expect(fileName).toBe('overfoot-session-2026-05-06.json');
    expect(text).not.toContain('stairs');
    const document = parseRecording(text);
    expect(document.limits).toEqual({ 'knee-angle': { least: -10, most: 14 } });
    expect(document.derived.repetitions).toHaveLength(3);
  });
});

describe('saveTable(rows)', () => {
  it('saves one row per repetition, judged by the limits in force, under a file name that identifies nobody', async () => {
    const { review, world } = start();
    await review.openFile(recording);
    review.moveLimits(withLimit(review.store.getState().limits.present, 'knee-angle', 'most', 30));
    review.saveTable('repetitions');
    const [file] = world.saved;
    expect(file!.fileName).toBe('overfoot-repetitions-2026-05-06.csv');
    const lines = file!.text.split('\r\n');
    expect(lines).toHaveLength(1 + 3 + 1);
    expect(lines[3]).toContain(',30,10,');
    expect(lines[3]).not.toContain('out-of-line');
    expect(lines[1]).toMatch(/,Invented: a made-up person\.$/);
  });

  it('saves one row per frame', async () => {
    const { review, world } = start();
    await review.openFile(recording);
    review.saveTable('frames');
    const [file] = world.saved;
    expect(file!.fileName).toBe('overfoot-frames-2026-05-06.csv');
    expect(file!.text.split('\r\n')).toHaveLength(1 + film.track.timesMs.length + 1);
  });

  it('does nothing where nothing is shown', () => {
    const { review, world } = start();
    review.saveTable('frames');
    expect(world.saved).toEqual([]);
  });
});

describe('attachVideo(file)', () => {
  it('accepts the video that was measured and rejects any other', async () => {
    const { review, state, world } = start();
    await review.openFile(new File([recordingText], 'saved.json'));
    world.facts = { ...facts, durationMs: facts.durationMs + 4000, fileName: 'other.mp4' };
    await review.attachVideo(new File(['x'], 'other.mp4'));
    expect(state().problem?.sentence).toContain('"other.mp4" is not the video that was measured');
    expect(review.store.getState().recording?.video).toBeNull();
    world.facts = facts;
    await review.attachVideo(video);
    expect(state().problem).toBeNull();
    expect(review.store.getState().recording?.video).toBe(video);
  });
});

describe('prepare()', () => {
  it('starts the tracker once and reports where it runs', async () => {
    const { tracking, trackingState, world } = start();
    await Promise.all([tracking.prepare(), tracking.prepare()]);
    expect(world).toMatchObject({ trackersStarted: 1, modelsLoaded: ['full'] });
    expect(trackingState().device.state).toBe('ready');
  });

  it('reports a failure without blocking anything', async () => {
    const { tracking, state, trackingState, world } = start();
    world.beforeLoad = () => Promise.reject(new Error('no graphics'));
    await tracking.prepare();
    expect(trackingState().device).toEqual({ state: 'failed', sentence: 'no graphics' });
    expect(state().problem).toBeNull();
  });
});
