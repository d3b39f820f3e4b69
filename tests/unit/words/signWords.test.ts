import { expect, it } from 'vitest';
import { signIds } from '#core/safety/signs';
import { signAdvice, signWords } from '#words/signWords';

it('each sign leads to a professional, and names no disease', () => {
  for (const id of signIds) {
    const [words, advice] = [signWords(id), signAdvice(id)];
    expect(advice).toMatch(/^Do not exercise(\.| until) .*(doctor|therapist)/);
    expect(words).toMatch(/^[a-z].*[a-z]$/);
    expect(`${words} ${advice}`).not.toMatch(/thrombo|arthritis|fracture|infection|clot|rupture/i);
  }
  expect(signWords('calf')).toMatch(/calf/);
});
