import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyEdit, endMove, moveEdit, redoEdit, startHistory, undoEdit } from '#core/history';

const edits = fc.array(fc.nat());

describe('applyEdit(history, edit), undoEdit(history), redoEdit(history)', () => {
  it('undo after an edit gives the edits before it; redo brings it back', () => {
    fc.assert(
      fc.property(edits, fc.nat(), (done, next) => {
        const after = applyEdit(startHistory(done), next);
        expect(undoEdit(after).done).toEqual(done);
        expect(redoEdit(undoEdit(after))).toEqual(after);
      }),
    );
  });

  it('undo and redo edits one by one, the latest first', () => {
    const back = undoEdit(undoEdit(startHistory(['a', 'b', 'c'])));
    expect(back).toEqual({ done: ['a'], undone: ['c', 'b'], moving: null });
    expect(redoEdit(back).done).toEqual(['a', 'b']);
    expect(redoEdit(redoEdit(back)).done).toEqual(['a', 'b', 'c']);
  });

  it('stay as they are where there is nothing to undo or redo', () => {
    const empty = startHistory<string>();
    expect(undoEdit(empty)).toBe(empty);
    expect(redoEdit(empty)).toBe(empty);
  });

  it('forget what was undone once there is a new edit', () => {
    fc.assert(
      fc.property(edits, fc.nat(), fc.nat(), (done, first, second) => {
        const history = applyEdit(undoEdit(applyEdit(startHistory(done), first)), second);
        expect(history).toEqual(startHistory([...done, second]));
      }),
    );
  });
});

describe('moveEdit(history, edit), endMove(history)', () => {
  const moved = moveEdit(moveEdit(startHistory(['a']), 'b'), 'c');

  it('count a whole move as one edit once it has ended', () => {
    expect(moved.done).toEqual(['a']);
    expect(endMove(moved)).toEqual(startHistory(['a', 'c']));
  });

  it('can be undone while it is in progress, and not redone', () => {
    expect(undoEdit(moved)).toEqual(startHistory(['a']));
  });

  it('stays where it is while another edit is made', () => {
    expect(applyEdit(moved, 'd')).toEqual({ done: ['a', 'd'], undone: [], moving: 'c' });
  });

  it('leave a history without a move as it is', () => {
    const history = startHistory(['a']);
    expect(endMove(history)).toBe(history);
  });
});
