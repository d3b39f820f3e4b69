import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addCorrection,
  redoCorrection,
  startCorrections,
  undoCorrection,
} from '#core/correction/correctionHistory';

const correction = fc.nat(9000).map((atMs) => ({
  change: { kind: 'exclude' as const, atMs, reason: 'x' },
  by: 'T1',
  at: '2026-01-02T03:04:05.000Z',
}));

describe('corrections as a list', () => {
  it('undo after adding gives the list before; redo brings it back', () => {
    fc.assert(
      fc.property(fc.array(correction), correction, (done, next) => {
        const before = startCorrections(done);
        const after = addCorrection(before, next);
        expect(undoCorrection(after).done).toEqual(done);
        expect(redoCorrection(undoCorrection(after))).toEqual(after);
      }),
    );
  });

  it('stays as it is where there is nothing to undo or redo', () => {
    const empty = startCorrections();
    expect(undoCorrection(empty)).toBe(empty);
    expect(redoCorrection(empty)).toBe(empty);
  });

  it('forgets what was taken back once something new is done', () => {
    fc.assert(
      fc.property(correction, correction, (first, second) => {
        const history = addCorrection(undoCorrection(addCorrection(startCorrections(), first)), second);
        expect(history).toEqual({ done: [second], undone: [] });
      }),
    );
  });
});
