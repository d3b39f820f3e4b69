import { describe, expect, it } from 'vitest';
import type { Correction } from '#core/correction/correction';
import { applyEdit, undoEdit } from '#core/history';
import type { Limits } from '#core/protocol/limits';
import {
  correctionsOf,
  endLimitMove,
  limitsBeforeMove,
  moveLimits,
  startEdits,
  undoLimits,
} from '#features/review/store/reviewEdits';

const kneeTo = (most: number, least = -8): Limits => ({ 'knee-angle': { least, most } });
const first = kneeTo(10);
const correction = (atMs: number): Correction => ({
  change: { kind: 'exclude', atMs, reason: 'x' },
  by: 'T1',
  at: '2026-01-02T03:04:05.000Z',
});
const earlier = startEdits([correction(1)]);
/** A correction that was undone. */
const undone = undoEdit(applyEdit(earlier, { kind: 'correction', correction: correction(2) }));

describe('startEdits(corrections), correctionsOf(edits)', () => {
  it('give the corrections in force, earlier ones first', () => {
    expect(correctionsOf(startEdits())).toEqual([]);
    const edits = applyEdit(earlier, { kind: 'limits', before: first, after: kneeTo(12) });
    const more = applyEdit(edits, { kind: 'correction', correction: correction(2) });
    expect(correctionsOf(more)).toEqual([correction(1), correction(2)]);
    expect(correctionsOf(undoEdit(more))).toEqual([correction(1)]);
  });
});

describe('moveLimits(edits, limits, next), endLimitMove(edits)', () => {
  const moved = moveLimits(earlier, first, kneeTo(11));
  const further = moveLimits(moved.edits, moved.limits, kneeTo(13));

  it('count a whole move as one change', () => {
    expect(further.limits).toEqual(kneeTo(13));
    expect(limitsBeforeMove(further.edits)).toEqual(first);
    const ended = endLimitMove(further.edits);
    expect(ended.done.slice(1)).toEqual([{ kind: 'limits', before: first, after: kneeTo(13) }]);
    expect(limitsBeforeMove(ended)).toBeNull();
  });

  it('count a move that ends where it began as no change', () => {
    const back = moveLimits(moved.edits, moved.limits, kneeTo(10));
    expect(endLimitMove(back.edits)).toEqual(earlier);
  });

  it('keep limits in their range', () => {
    expect(moveLimits(earlier, first, kneeTo(99)).limits['knee-angle'].most).toBe(30);
    expect(moveLimits(earlier, first, kneeTo(10, 3)).limits['knee-angle'].least).toBe(-1);
  });

  it('leave the corrections that can be redone', () => {
    const ended = endLimitMove(moveLimits(undone, first, kneeTo(12)).edits);
    expect(ended.undone).toEqual([{ kind: 'correction', correction: correction(2) }]);
  });
});

describe('undoLimits(edits)', () => {
  it('undoes a change or a move, which can’t be redone', () => {
    const { edits } = moveLimits(undone, first, kneeTo(20));
    expect(undoLimits(edits)).toEqual(undone);
    expect(undoLimits(endLimitMove(edits))).toEqual(undone);
  });
});
