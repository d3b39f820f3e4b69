import { describe, expect, it } from 'vitest';
import { withLimit } from '#core/protocol/limits';
import { parseRecording } from '#documents/recording/parseRecording';
import { readRecordingHead } from '#documents/recording/readRecordingHead';
import type { RecordingHead } from '#documents/recording/recordingHead';
import { createApp } from '#features/review/store/createApp';
import type { KeptReview } from '#features/review/store/keptReview';
import { fakeAdapters, recordingText } from '../../../../support/fakeAdapters';

const settle = () => new Promise((resolve) => setTimeout(resolve, 0));

async function openKept(save?: KeptReview['save']) {
  const { adapters, world } = fakeAdapters();
  const app = createApp(adapters);
  const saved: RecordingHead[] = [];
  app.openKept(parseRecording(recordingText), 'a set', null, {
    session: null,
    save:
      save ??
      ((recording) => {
        saved.push(readRecordingHead(JSON.parse(JSON.stringify(recording))));
        return Promise.resolve();
      }),
    readOther: () => Promise.reject(new Error('There is no other.')),
  });
  await settle();
  const middleOf = (index: number) => {
    const { repetitions, timesMs } = app.store.getState().recording!.measurement;
    const { loadedFrom, loadedTo } = repetitions[index]!;
    return (timesMs[loadedFrom]! + timesMs[loadedTo]!) / 2;
  };
  return { app, saved, world, state: app.store.getState, middleOf };
}

describe('correct(change), undo(), redo()', () => {
  it('changes what is shown, keeps the original, and can be undone', async () => {
    const { app, saved, state, middleOf } = await openKept();
    const before = app.store.getState().recording!;
    app.select(1);
    app.correct({ kind: 'exclude', atMs: middleOf(1), reason: 'A trial.' });
    await settle();
    expect(app.store.getState().recording).toMatchObject({
      isByHand: true,
      excluded: [null, 'A trial.', null],
    });
    expect(state()).toMatchObject({ selected: 1, keeping: { state: 'kept' } });
    const kept = saved.at(-1)!;
    expect(kept.corrections).toEqual([
      {
        change: { kind: 'exclude', atMs: middleOf(1), reason: 'A trial.' },
        by: 'T1',
        at: '2026-05-06T07:08:09.000Z',
      },
    ]);
    expect(kept.derived.repetitions.map(({ excluded }) => excluded)).toEqual([
      undefined,
      'A trial.',
      undefined,
    ]);
    expect(kept).not.toHaveProperty('observed');
    app.undo();
    await settle();
    expect(app.store.getState().recording!.measurement).toEqual(before.measurement);
    expect(saved.at(-1)!.corrections).toEqual([]);
    app.redo();
    expect(app.store.getState().recording!.isByHand).toBe(true);
  });

  it('opens a kept recording with its corrections, which can be undone', async () => {
    const { app, saved, middleOf } = await openKept();
    app.correct({ kind: 'split', atMs: middleOf(0) });
    await settle();
    const again = await openKept();
    const { observed } = parseRecording(recordingText);
    again.app.openKept({ ...saved.at(-1)!, observed }, 'the set again', null);
    expect(again.app.store.getState().recording!.measurement.repetitions).toHaveLength(4);
    again.app.undo();
    expect(again.app.store.getState().recording!.measurement.repetitions).toHaveLength(3);
  });

  it('undoes limits and corrections, latest first', async () => {
    const { app, state, middleOf } = await openKept();
    app.correct({ kind: 'exclude', atMs: middleOf(0), reason: 'A trial.' });
    app.moveLimits(withLimit(app.store.getState().limits.present, 'knee-angle', 'most', 5));
    app.endLimitMove();
    expect(state().review.limitsSet).toMatchObject([{ limits: { 'knee-angle': { most: 5 } }, by: 'T1' }]);
    app.undo();
    expect(state().limits.present['knee-angle'].most).toBe(12);
    expect(state().review.limitsSet).toEqual([]);
    expect(app.store.getState().recording!.isByHand).toBe(true);
    app.undo();
    expect(app.store.getState().recording!.isByHand).toBe(false);
    app.undo();
    expect(state().undoable).toEqual([]);
  });

  it('switches the working side as a correction, and leaves the setup as it was', async () => {
    const { app, saved } = await openKept();
    app.setSide('left');
    await settle();
    expect(app.store.getState().recording!.measurement.setup.side).toBe('left');
    expect(saved.at(-1)!.setup.side).toBe('right');
  });

  it('reports a failed save', async () => {
    const { app, state, middleOf } = await openKept(() => Promise.reject(new Error('full')));
    app.correct({ kind: 'exclude', atMs: middleOf(0), reason: 'A trial.' });
    await settle();
    expect(state().keeping.state).toBe('failed');
    expect(app.store.getState().recording!.isByHand).toBe(true);
  });

  it('saves changes made during a save', async () => {
    let letGo: () => void = () => undefined;
    const saved: RecordingHead[] = [];
    const { app, state } = await openKept(async (recording) => {
      saved.push(recording);
      await new Promise<void>((resolve) => (letGo = resolve));
    });
    app.setRemark(null, 'First.');
    app.setRemark(null, 'Second.');
    letGo();
    await settle();
    expect(saved.at(-1)!.review!.remarks).toMatchObject([{ text: 'Second.' }]);
    expect(state().keeping.state).toBe('saving');
    letGo();
    await settle();
    expect(state().keeping.state).toBe('kept');
  });
});

describe('setRemark(atMs, text), markReviewed(isReviewed)', () => {
  it('keeps one signed remark per place; an empty one is removed', async () => {
    const { app, saved, state } = await openKept();
    app.setRemark(2000, ' Good depth. ');
    app.setRemark(null, 'Tired at the end.');
    app.setRemark(2000, 'Good depth, slow.');
    expect(state().review.remarks.map(({ text }) => text)).toEqual([
      'Tired at the end.',
      'Good depth, slow.',
    ]);
    app.setRemark(2000, ' ');
    app.markReviewed(true);
    await settle();
    expect(saved.at(-1)!.review).toMatchObject({
      remarks: [{ atMs: null, text: 'Tired at the end.' }],
      reviewed: { by: 'T1' },
    });
    app.markReviewed(false);
    expect(state().review.reviewed).toBeNull();
  });
});

describe('saveRecording() with corrections', () => {
  it('writes them into the file', async () => {
    const { app, world, middleOf } = await openKept();
    app.correct({ kind: 'exclude', atMs: middleOf(2), reason: 'Somebody walked by.' });
    app.saveRecording();
    const document = parseRecording(world.saved.at(-1)!.text);
    expect(document.corrections).toHaveLength(1);
    expect(document.derived.repetitions[2]!.excluded).toBe('Somebody walked by.');
  });
});
