import { describe, expect, it } from 'vitest';
import { defaultLimits, withLimit } from '#core/protocol/limits';
import { parseRecording } from '#documents/recording/parseRecording';
import { judgeAll } from '#shell/tracking/shownRecording';
import { recordingText } from '../../../../support/fakeAdapters';
import { keptReview, settle, trackedReview } from '../../../../support/startReview';

describe('correct(change), undo(), redo()', () => {
  it('changes what is shown, keeps the original, and can be undone', async () => {
    const { review, saved, state, middleOf } = await keptReview();
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
    const { review, saved, middleOf } = await keptReview();
    review.correct({ kind: 'split', atMs: middleOf(0) });
    await settle();
    const again = await keptReview();
    const { observed } = parseRecording(recordingText);
    again.review.openKept({ ...saved.at(-1)!, observed }, 'the set again', null);
    expect(again.review.store.getState().recording!.measurement.repetitions).toHaveLength(4);
    again.review.undo();
    expect(again.review.store.getState().recording!.measurement.repetitions).toHaveLength(3);
  });

  it('undoes limits and corrections, latest first', async () => {
    const { review, state, middleOf } = await keptReview();
    review.correct({ kind: 'exclude', atMs: middleOf(0), reason: 'A trial.' });
    review.moveLimits(withLimit(review.store.getState().limits, 'knee-angle', 'most', 5));
    review.endLimitMove();
    expect(state().entries.limitsSet).toMatchObject([{ limits: { 'knee-angle': { most: 5 } }, by: 'T1' }]);
    review.undo();
    expect(state().limits['knee-angle'].most).toBe(12);
    expect(state().entries.limitsSet).toEqual([]);
    expect(review.store.getState().recording!.isByHand).toBe(true);
    review.undo();
    expect(review.store.getState().recording!.isByHand).toBe(false);
    review.undo();
    expect(state().edits.done).toEqual([]);
  });

  it('keeps limits to this set until they are asked to hold for later ones', async () => {
    const { review, saved, state } = await keptReview();
    review.holdForLater(true);
    expect(state().entries.limitsSet).toEqual([]);
    review.putLimits(withLimit(state().limits, 'knee-angle', 'most', 5));
    expect(state().entries.limitsSet[0]).not.toHaveProperty('forLater');
    review.holdForLater(true);
    await settle();
    expect(saved.at(-1)!.review!.limitsSet).toMatchObject([{ forLater: true }]);
    review.holdForLater(false);
    expect(state().entries.limitsSet[0]).not.toHaveProperty('forLater');
  });

  it('redoes corrections alone, also after the limits were changed', async () => {
    const { review, state, middleOf } = await keptReview();
    review.correct({ kind: 'exclude', atMs: middleOf(0), reason: 'A trial.' });
    review.undo();
    review.putLimits(withLimit(state().limits, 'knee-angle', 'most', 5));
    review.undo();
    review.redo();
    expect(state().recording!.excluded).toEqual(['A trial.', null, null]);
    expect(state().limits['knee-angle'].most).toBe(12);
    review.redo();
    expect(state().edits.done).toHaveLength(1);
  });
});

describe('moveLimits(limits), endLimitMove(), undo(), putLimits(limits)', () => {
  const verdicts = (state: Awaited<ReturnType<typeof trackedReview>>['state']) =>
    state().judgements.map(({ verdict }) => verdict);

  it('judge again at once and count the verdicts that changed since the move began', async () => {
    const { review, state } = await trackedReview();
    const before = verdicts(state);
    review.moveLimits(withLimit(state().limits, 'knee-angle', 'most', 25));
    review.moveLimits(withLimit(state().limits, 'knee-angle', 'most', 30));
    review.endLimitMove();
    const after = verdicts(state);
    expect(after[2]).not.toBe(before[2]);
    expect(state().judgements).toEqual(
      judgeAll(review.store.getState().recording!.measurement, state().limits),
    );
    const changed = after.filter((verdict, index) => verdict !== before[index]).length;
    expect(state().changedVerdicts).toBe(changed);
    review.undo();
    expect(verdicts(state)).toEqual(before);
    expect(state().limits['knee-angle'].most).toBe(10);
    expect(state().changedVerdicts).toBe(changed);
  });

  it('judge by limits of other measures as well, and undo them', async () => {
    const { review, state } = await trackedReview();
    const before = verdicts(state);
    const { limits } = state();
    const depths = review.store
      .getState()
      .recording!.measurement.repetitions.map(({ ranges }) => ranges.depth.max!);
    const shallow = Math.min(...depths.map(({ value, band }) => value - 2 * band));
    review.putLimits(withLimit(limits, 'depth', 'most', shallow));
    expect(verdicts(state)).toEqual(before.map(() => 'out'));
    expect(state().changedVerdicts).toBe(before.filter((verdict) => verdict !== 'out').length);
    expect(state().entries.limitsSet.at(-1)!.limits.depth).toEqual({ most: shallow });
    review.undo();
    expect(verdicts(state)).toEqual(before);
    expect(state().limits).toEqual(limits);
  });

  it('restore the defaults, which can be undone as well', async () => {
    const { review, state } = await trackedReview();
    review.moveLimits(withLimit(state().limits, 'knee-angle', 'least', -4));
    review.endLimitMove();
    review.putLimits(defaultLimits);
    expect(state().limits).toEqual({ 'knee-angle': { least: -10, most: 10 } });
    review.undo();
    expect(state().limits).toEqual({ 'knee-angle': { least: -4, most: 10 } });
  });

  it('change nothing where there is nothing to undo', async () => {
    const { review, state } = await trackedReview();
    const before = state().limits;
    review.undo();
    expect(state().limits).toBe(before);
  });
});
