import { describe, expect, it } from 'vitest';
import { isProblem, Problem } from '#core/problem';

describe('isProblem(error, ...kinds)', () => {
  const problem = new Problem('plan', 'This is not a plan.', { cause: 'none' });

  it('accepts a problem of one of the kinds', () => {
    expect(isProblem(problem, 'plan')).toBe(true);
    expect(isProblem(problem, 'file', 'plan')).toBe(true);
    expect(problem).toMatchObject({ kind: 'plan', message: 'This is not a plan.', cause: 'none' });
  });

  it('refuses other kinds and other errors', () => {
    expect(isProblem(problem, 'file')).toBe(false);
    expect(isProblem(problem)).toBe(false);
    expect(isProblem(Object.assign(new Error('no'), { kind: 'plan' }), 'plan')).toBe(false);
    expect(isProblem(undefined, 'plan')).toBe(false);
  });
});
