import { describe, expect, it, vi } from 'vitest';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { repetitionRows } from '#features/review/rules/repetitionRow';
import { startReview, video } from '../../../../support/startReview';

/** A review whose video was tracked; `beside` acts on it before the closer look begins. */
async function tracked(beside: (started: ReturnType<typeof startReview>) => void = () => undefined) {
  const started = startReview();
  beside(started);
  const { review } = started;
  await review.openFile(video);
  review.setSide('right');
  await review.startTracking();
  const closerState = () => started.tracking.store.getState().closer;
  const shown = () => review.store.getState().recording!;
  return { ...started, closerState, shown };
}

const never = () => new Promise<void>(() => undefined);

describe('after a video was tracked', () => {
  it('the usual look is shown at once, and the closer one follows by itself', async () => {
    const { world, shown, closerState } = await tracked(({ world }) => (world.secondAsidePx = 4));
    expect(shown().observed.closer).toBeUndefined();
    expect(closerState()).not.toBeNull();
    await vi.waitFor(() => expect(closerState()).toBeNull());
    expect(shown().observed.closer).toMatchObject({
      network: 'MoveNet Thunder',
      frames: world.framesSeenCloser,
    });
    expect(world.framesSeenCloser).toBeLessThan(world.framesEstimated);
  });

  it('repetitions become firm one after the other, and the selected one stays selected', async () => {
    const { review, shown } = await tracked();
    review.select(1);
    const seenOnce: number[] = [];
    review.store.subscribe(({ recording, judgements, limits, selected }, before) => {
      if (recording === before.recording || recording === null) return;
      const rows = repetitionRows(recording.measurement, judgements, limits, recording);
      seenOnce.push(rows.filter(({ isSeenOnce }) => isSeenOnce).length);
      expect(selected).toBe(1);
    });
    await vi.waitFor(() => expect(seenOnce.at(-1)).toBe(0));
    const repetitions = shown().measurement.repetitions.length;
    expect(seenOnce.slice(0, repetitions - 1)).toEqual(
      Array.from({ length: repetitions - 1 }, (_, firm) => repetitions - 1 - firm),
    );
  });

  it('a closer look that is stopped keeps what it has seen, and the file says how far it came', async () => {
    const { review, world, shown, closerState } = await tracked();
    await vi.waitFor(() => expect(shown().observed.closer).toBeDefined());
    world.beforeCloser = never;
    review.stopCloserLook();
    await vi.waitFor(() => expect(closerState()).toBeNull());
    const { closer } = shown().observed;
    expect(closer!.untilMs).toBeLessThan(shown().observed.timesMs.at(-1)!);
    review.saveRecording();
    const saved = JSON.parse(world.saved[0]!.text) as RecordingDocument;
    expect(saved.observed.closer).toEqual(closer);
  });

  it('corrections made meanwhile stay', async () => {
    const { review, shown, closerState } = await tracked();
    await vi.waitFor(() => expect(shown().observed.closer).toBeDefined());
    const { repetitions } = shown().measurement;
    const atMs = shown().measurement.timesMs[repetitions[0]!.loadedFrom + 2]!;
    review.correct({ kind: 'exclude', atMs, reason: 'A trial.' });
    await vi.waitFor(() => expect(closerState()).toBeNull());
    expect(shown().excluded[0]).toBe('A trial.');
    expect(shown().observed.closer).toBeDefined();
  });

  it('says why where the closer look fails, and the usual one stands', async () => {
    const { review, shown } = await tracked(
      ({ world }) => (world.beforeSecond = () => Promise.reject(new Error('The files could not be loaded.'))),
    );
    await vi.waitFor(() => expect(review.store.getState().problem).not.toBeNull());
    expect(review.store.getState().problem!.sentence).toContain('The files could not be loaded.');
    expect(shown().observed.closer).toBeUndefined();
    expect(shown().measurement.repetitions.length).toBeGreaterThan(0);
  });

  it('the closer look ends when the review is left', async () => {
    const { closerState, navigation, world } = await tracked();
    await vi.waitFor(() => expect(world.framesSeenCloser).toBeGreaterThan(0));
    await navigation.show('start', true);
    await vi.waitFor(() => expect(closerState()).toBeNull());
    expect(world.sourcesOpen).toBe(0);
  });
});
