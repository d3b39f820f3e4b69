import { expect, it } from 'vitest';
import { megabytes } from '#words/megabytes';

it.each([
  [0, '0.1 MB'],
  [310_000, '0.3 MB'],
  [9_900_000, '9.9 MB'],
  [12_400_000, '12 MB'],
  [10_737_000_000, '10.7 GB'],
])('megabytes(%i) says %s', (bytes, words) => {
  expect(megabytes(bytes)).toBe(words);
});
