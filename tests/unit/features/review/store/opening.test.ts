import { describe, expect, it, vi } from 'vitest';
import { defaultLimits } from '#core/protocol/limits';
import { judgeAll } from '#shell/tracking/shownRecording';
import { facts, film, recordingText } from '../../../../support/fakeAdapters';
import { startReview, trackedReview, video } from '../../../../support/startReview';

const never = () => new Promise<void>(() => undefined);

describe('openFile(file)', () => {
  it('accepts a video and reports its facts', async () => {
    const { review, state, world } = startReview();
    await review.openFile(video);
    expect(state()).toMatchObject({ chosen: facts, opening: null, problem: null, screen: 'start' });
    expect(world.sourcesOpen).toBe(0);
  });

  it('explains why a file is not a video, and accepts the next one', async () => {
    const { review, state } = startReview();
    await review.openFile(new File(['x'], 'bad.txt'));
    expect(state().problem?.sentence).toContain('"bad.txt" is not a video');
    expect(state()).toMatchObject({ chosen: null, opening: null, screen: 'start' });
    await review.openFile(video);
    expect(state()).toMatchObject({ chosen: facts, problem: null });
  });

  it('opens a recording document at once, measured afresh, without a video', async () => {
    const { review, state } = startReview();
    await review.openFile(new File([recordingText], 'overfoot-session-2026-02-03.json'));
    expect(state()).toMatchObject({ screen: 'review', setup: { side: 'right' } });
    expect(state().limits['knee-angle'].most).toBe(12);
    expect(review.store.getState().recording).toMatchObject({ origin: 'session', video: null });
    expect(state().judgements).toHaveLength(3);
  });

  it('reports what is wrong with a damaged recording document', async () => {
    const { review, state } = startReview();
    await review.openFile(new File([recordingText.slice(0, 500)], 'cut.json'));
    expect(state().screen).toBe('start');
    expect(state().problem?.sentence).toContain('not JSON');
  });

  it('keeps the file that was chosen last when an earlier one opens late', async () => {
    const { review, state, adapters } = startReview();
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
    const { review, state } = startReview();
    await review.openExample();
    expect(state()).toMatchObject({ screen: 'review', opening: null });
    expect(review.store.getState().recording).toMatchObject({
      origin: 'example',
      note: 'Invented: a made-up person.',
    });
    expect(review.store.getState().recording?.video?.name).toBe('example.mp4');
  });

  it('reports a missing example', async () => {
    const { review, state, adapters } = startReview();
    adapters.fetchExample = () => Promise.reject(new Error('the json file is missing'));
    await review.openExample();
    expect(state().problem?.sentence).toContain('the json file is missing');
    expect(state()).toMatchObject({ screen: 'start', opening: null });
  });
});

describe('startTracking()', () => {
  it('does nothing before a video and a side are chosen', async () => {
    const { review, state, world } = startReview();
    await review.startTracking();
    await review.openFile(video);
    await review.startTracking();
    expect(state().screen).toBe('start');
    expect(world.trackersStarted).toBe(0);
  });

  it('goes from video to judged repetitions', async () => {
    const { state, review, world } = await trackedReview();
    expect(state()).toMatchObject({ screen: 'review', problem: null });
    const { measurement } = review.store.getState().recording!;
    expect(state().judgements).toEqual(judgeAll(measurement, defaultLimits));
    expect(state().judgements).toHaveLength(3);
    expect(state().judgements[2]!.verdict).toBe('out');
    expect(review.store.getState().recording?.model).toMatchObject({
      size: 'full',
      weights: 'made-up 4.5.6',
      backend: 'wasm',
    });
    expect(review.store.getState().recording?.track.timesMs).toHaveLength(film.track.timesMs.length);
    expect(world.sourcesOpen).toBe(0);
  });

  it('reports its progress, and which device it runs on', async () => {
    const { review, tracking, trackingState } = startReview();
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
    const { review, state, trackingState, world } = startReview();
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
    // The first try takes a second tracker, in case it is the worker that failed.
    expect(world).toMatchObject({ trackersStarted: 3, trackersClosed: 2, sourcesOpen: 0 });
  });
});

describe('cancel()', () => {
  it('stops tracking at once, keeps the chosen video, and shows no problem', async () => {
    const { review, tracking, state, trackingState, world } = startReview();
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
    const { review, tracking, state, trackingState, world } = startReview();
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
    const { review, tracking, state, trackingState, world } = startReview();
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

describe('attachVideo(file)', () => {
  it('accepts the video that was measured and rejects any other', async () => {
    const { review, state, world } = startReview();
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
