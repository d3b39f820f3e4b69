import { describe, expect, it } from 'vitest';
import { verdicts } from '#core/scoring/verdict';
import { verdictWords } from '#words/verdictWords';
import { unfit } from '../../support/unfitWords';

describe('verdictWords', () => {
  it('has different words for each verdict', () => {
    expect(new Set(verdicts.map((verdict) => verdictWords(verdict))).size).toBe(verdicts.length);
    for (const verdict of verdicts) expect(verdictWords(verdict)).not.toMatch(unfit);
  });
});
