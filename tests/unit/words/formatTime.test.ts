import { describe, expect, it } from 'vitest';
import { formatTime } from '#words/formatTime';

describe('formatTime(timeMs)', () => {
  it.each([
    [-200, '0.0 s'],
    [0, '0.0 s'],
    [9649, '9.6 s'],
    [59_940, '59.9 s'],
    [59_960, '1:00.0'],
    [69_649, '1:09.6'],
    [605_000, '10:05.0'],
  ])('writes %f as %s', (timeMs, words) => expect(formatTime(timeMs)).toBe(words));
});
