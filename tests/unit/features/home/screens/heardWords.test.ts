import { describe, expect, it } from 'vitest';
import { heardWords } from '#features/home/screens/heardWords';

describe('heardWords(heard)', () => {
  it.each([
    ['in', 'inward', null, 'Good'],
    ['probably-in', null, null, 'Good'],
    ['out', 'inward', null, 'Knee out'],
    ['probably-out', 'outward', null, 'Knee in'],
    ['out', null, 'Sit back, hip over knee.', 'Sit back'],
    ['out', null, 'Belt level.', 'Belt level'],
    ['cant-tell', 'inward', null, null],
    ['not-measured', null, null, null],
  ] as const)('of %s %s, cue %s, is %s', (verdict, direction, cue, words) => {
    expect(heardWords({ verdict, direction, cue })).toBe(words);
  });
});
