import { expect, it } from 'vitest';
import { newSigns } from '#core/safety/newSigns';
import { otherSigns, redFlags } from '#core/safety/redFlags';
import { signIds } from '#core/safety/signs';

it('every sign is a red flag, or asked for as new, once', () => {
  expect([...redFlags, ...otherSigns].map(({ id }) => id).sort()).toEqual([...signIds].sort());
});

it('the questions about what is new are three, each answer of which is a sign of its own', () => {
  expect(newSigns).toHaveLength(3);
  const ids = newSigns.flatMap(({ signs }) => [...signs]);
  expect(new Set(ids).size).toBe(ids.length);
});
