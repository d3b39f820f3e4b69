import { expect, it } from 'vitest';
import { exerciseIds } from '#core/exercises/exercises';
import { libraryIds } from '#core/exercises/library/libraryIds';

it('libraryIds holds every exercise once, from the preparing hold to the hardest task', () => {
  expect([...libraryIds].sort()).toEqual([...exerciseIds].sort());
  expect(libraryIds[0]).toBe('quad-press-hold');
  expect(libraryIds.at(-1)).toBe('single-leg-sit-to-stand');
});
