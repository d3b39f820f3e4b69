import { describe, expect, it } from 'vitest';
import { Problem } from '#core/problem';
import { explainProblem } from '#shell/explainProblem';

describe('explainProblem(error, doing)', () => {
  it('passes on the sentence of a problem that explains itself', () => {
    expect(explainProblem(new Problem('video', 'It is empty.'), 'open').sentence).toBe('It is empty.');
    expect(explainProblem(new Problem('recording', 'It is cut.'), 'open').sentence).toBe('It is cut.');
  });

  it('says what could not be done, the reason, and what to do, for anything else', () => {
    const { title, sentence } = explainProblem(new Error('disk full.'), 'track');
    expect(title).toBe('This could not be tracked');
    expect(sentence).toMatch(/^The reason reported is: disk full\. Try again/);
    expect(explainProblem('what', 'open').sentence).toContain('no reason was given');
  });
});
