import { describe, expect, it } from 'vitest';
import { isDoneInRemark, markDone, ownWords } from '#documents/session/doneInRemark';

describe('markDone(remark, name, isDone), isDoneInRemark(remark, name), ownWords(remark)', () => {
  it('tick something off and take that back, and leave what was written as it is', () => {
    const written = 'It went well.\nA bit stiff.';
    const ticked = markDone(markDone(written, 'Walking', true), 'Cycling', true);
    expect(ticked).toBe('✓ Cycling\n✓ Walking\nIt went well.\nA bit stiff.');
    expect([isDoneInRemark(ticked, 'Walking'), isDoneInRemark(ticked, 'Walk')]).toEqual([true, false]);
    expect(ownWords(ticked)).toBe(written);
    expect(markDone(markDone(ticked, 'Cycling', false), 'Walking', false)).toBe(written);
  });

  it('tick off where nothing was written, once', () => {
    const ticked = markDone(markDone('', 'Walking', true), 'Walking', true);
    expect(ticked).toBe('✓ Walking');
    expect(ownWords(ticked)).toBe('');
    expect(markDone(ticked, 'Walking', false)).toBe('');
  });
});
