import { expect, it } from 'vitest';
import { oneDecimal } from '#words/oneDecimal';

it.each([
  [13.24, '13.2'],
  [8, '8'],
  [4.85, '4.9'],
  [-0.3, '−0.3'],
  [-0.04, '0'],
  [0, '0'],
  [13.2 - 7.9, '5.3'],
])('oneDecimal(%d) is %s', (value, text) => {
  expect(oneDecimal(value)).toBe(text);
});
