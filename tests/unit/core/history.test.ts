import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { apply, endMove, move, redo, startHistory, undo } from '#core/history';

const edits = fc.array(fc.nat());

describe('apply(history, edit), undo(history), redo(history)', () => {
  it('undo after an edit gives the edits before it; redo brings it back', () => {
    fc.assert(
      fc.property(edits, fc.nat(), (done, next) => {
        const after = apply(startHistory(done), next);
        expect(undo(after).done).toEqual(done);
        expect(redo(undo(after))).toEqual(after);
      }),
    );
  });

  it('undo and redo edits one by one, the latest first', () => {
    const back = undo(undo(startHistory(['a', 'b', 'c'])));
    expect(back).toEqual({ done: ['a'], undone: ['c', 'b'], moving: null });
    expect(redo(back).done).toEqual(['a', 'b']);
    expect(redo(redo(back)).done).toEqual(['a', 'b', 'c']);
  });

  it('stay as they are where there is nothing to undo or redo', () => {
    const empty = startHistory<string>();
    expect(undo(empty)).toBe(empty);
    expect(redo(empty)).toBe(empty);
  });

  it('forget what was undone once there is a new edit', () => {
    fc.assert(
      fc.property(edits, fc.nat(), fc.nat(), (done, first, second) => {
        const history = apply(undo(apply(startHistory(done), first)), second);
        expect(history).toEqual(startHistory([...done, second]));
      }),
    );
  });
});

describe('move(history, edit), endMove(history)', () => {
  const moved = move(move(startHistory(['a']), 'b'), 'c');

  it('count a whole move as one edit once it has ended', () => {
    expect(moved.done).toEqual(['a']);
    expect(endMove(moved)).toEqual(startHistory(['a', 'c']));
  });

  it('can be undone while it is in progress, and not redone', () => {
    expect(undo(moved)).toEqual(startHistory(['a']));
  });

  it('stays where it is while another edit is made', () => {
    expect(apply(moved, 'd')).toEqual({ done: ['a', 'd'], undone: [], moving: 'c' });
  });

  it('leave a history without a move as it is', () => {
    const history = startHistory(['a']);
    expect(endMove(history)).toBe(history);
  });
});
