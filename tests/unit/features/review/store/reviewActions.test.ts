import { describe, expect, it } from 'vitest';
import { withLimit } from '#core/protocol/limits';
import { parseRecording } from '#documents/recording/parseRecording';
import { readRecordingHead } from '#documents/recording/readRecordingHead';
import type { RecordingHead } from '#documents/recording/recordingHead';
import { createReview } from '#features/review/store/createReview';
import type { KeptReview } from '#features/review/store/keptReview';
import { fakeAdapters, recordingText } from '../../../../support/fakeAdapters';

const settle = () => new Promise((resolve) => setTimeout(resolve, 0));

async function openKept(save?: KeptReview['save']) {
  const { adapters, world } = fakeAdapters();
  const review = createReview(adapters);
  const saved: RecordingHead[] = [];
  review.openKept(parseRecording(recordingText), 'a set', null, {
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
    const { repetitions, timesMs } = review.store.getState().recording!.measurement;
    const { loadedFrom, loadedTo } = repetitions[index]!;
    return (timesMs[loadedFrom]! + timesMs[loadedTo]!) / 2;
  };
  return { review, saved, world, state: review.store.getState, middleOf };
}

describe('correct(change), undo(), redo()', () => {
  it('changes what is shown, keeps the original, and can be undone', async () => {
    const { review, saved, state, middleOf } = await openKept();
    const before = review.store.getState().recording!;
    review.select(1);
    review.correct({ kind: 'exclude', atMs: middleOf(1), reason: 'A trial.' });
    await settle();
    expect(review.store.getState().recording).toMatchObject({
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
    review.undo();
    await settle();
    expect(review.store.getState().recording!.measurement).toEqual(before.measurement);
    expect(saved.at(-1)!.corrections).toEqual([]);
    review.redo();
    expect(review.store.getState().recording!.isByHand).toBe(true);
  });

  it('opens a kept recording with its corrections, which can be undone', async () => {
    const { review, saved, middleOf } = await openKept();
    review.correct({ kind: 'split', atMs: middleOf(0) });
    await settle();
    const again = await openKept();
    const { observed } = parseRecording(recordingText);
    again.review.openKept({ ...saved.at(-1)!, observed }, 'the set again', null);
    expect(again.review.store.getState().recording!.measurement.repetitions).toHaveLength(4);
    again.review.undo();
    expect(again.review.store.getState().recording!.measurement.repetitions).toHaveLength(3);
  });

  it('undoes limits and corrections, latest first', async () => {
    const { review, state, middleOf } = await openKept();
    review.correct({ kind: 'exclude', atMs: middleOf(0), reason: 'A trial.' });
    review.moveLimits(withLimit(review.store.getState().limits.present, 'knee-angle', 'most', 5));
    review.endLimitMove();
    expect(state().entries.limitsSet).toMatchObject([{ limits: { 'knee-angle': { most: 5 } }, by: 'T1' }]);
    review.undo();
    expect(state().limits.present['knee-angle'].most).toBe(12);
    expect(state().entries.limitsSet).toEqual([]);
    expect(review.store.getState().recording!.isByHand).toBe(true);
    review.undo();
    expect(review.store.getState().recording!.isByHand).toBe(false);
    review.undo();
    expect(state().undoable).toEqual([]);
  });

  it('switches the working side as a correction, and leaves the setup as it was', async () => {
    const { review, saved } = await openKept();
    review.setSide('left');
    await settle();
    expect(review.store.getState().recording!.measurement.setup.side).toBe('left');
    expect(saved.at(-1)!.setup.side).toBe('right');
  });

  it('reports a failed save', async () => {
    const { review, state, middleOf } = await openKept(() => Promise.reject(new Error('full')));
    review.correct({ kind: 'exclude', atMs: middleOf(0), reason: 'A trial.' });
    await settle();
    expect(state().keeping.state).toBe('failed');
    expect(review.store.getState().recording!.isByHand).toBe(true);
  });

  it('saves changes made during a save', async () => {
    let letGo: () => void = () => undefined;
    const saved: RecordingHead[] = [];
    const { review, state } = await openKept(async (recording) => {
      saved.push(recording);
      await new Promise<void>((resolve) => (letGo = resolve));
    });
    review.setRemark(null, 'First.');
    review.setRemark(null, 'Second.');
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
    const { review, saved, state } = await openKept();
    review.setRemark(2000, ' Good depth. ');
    review.setRemark(null, 'Tired at the end.');
    review.setRemark(2000, 'Good depth, slow.');
    expect(state().entries.remarks.map(({ text }) => text)).toEqual([
      'Tired at the end.',
      'Good depth, slow.',
    ]);
    review.setRemark(2000, ' ');
    review.markReviewed(true);
    await settle();
    expect(saved.at(-1)!.review).toMatchObject({
      remarks: [{ atMs: null, text: 'Tired at the end.' }],
      reviewed: { by: 'T1' },
    });
    review.markReviewed(false);
    expect(state().entries.reviewed).toBeNull();
  });
});

describe('saveRecording() with corrections', () => {
  it('writes them into the file', async () => {
    const { review, world, middleOf } = await openKept();
    review.correct({ kind: 'exclude', atMs: middleOf(2), reason: 'Somebody walked by.' });
    review.saveRecording();
    const document = parseRecording(world.saved.at(-1)!.text);
    expect(document.corrections).toHaveLength(1);
    expect(document.derived.repetitions[2]!.excluded).toBe('Somebody walked by.');
  });
});
