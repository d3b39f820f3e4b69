import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { withOtherVersion, type OtherVersion } from '#documents/patient/otherVersion';

const version = (text: string, day: number, by = 'AB'): OtherVersion => ({
  kind: 'visit',
  of: 'a-session',
  at: `2026-03-${String(day).padStart(2, '0')}T04:05:06.000Z`,
  by,
  text,
});
const together = (given: readonly OtherVersion[]) => given.reduce<OtherVersion[]>(withOtherVersion, []);

describe('withOtherVersion(kept, given)', () => {
  it('keeps each text once, from when it was found first', () => {
    const kept = [version('a', 3)];
    expect(withOtherVersion(kept, version('a', 4, 'KN'))).toBe(kept);
    expect(withOtherVersion(kept, version('a', 2, 'KN'))).toEqual([version('a', 2, 'KN')]);
    expect(withOtherVersion(kept, version('b', 2))).toEqual([version('b', 2), version('a', 3)]);
  });

  it('comes to the same in whatever order they are added', () => {
    const one = fc.record({
      text: fc.constantFrom('a', 'b', 'c'),
      day: fc.integer({ min: 1, max: 4 }),
      by: fc.constantFrom('AB', 'KN', 'PQ'),
    });
    fc.assert(
      fc.property(fc.array(one), fc.array(one), (first, second) => {
        const [a, b] = [first, second].map((all) => all.map(({ text, day, by }) => version(text, day, by)));
        expect(together([...a!, ...b!])).toEqual(together([...b!, ...a!]));
        expect(together(b!).reduce(withOtherVersion, together(a!))).toEqual(together([...a!, ...b!]));
      }),
    );
  });

  it('leaves out the oldest beyond 500, and beyond ten million characters together', () => {
    const many = Array.from({ length: 510 }, (_, index) => version(`text ${index}`, 1 + (index % 28)));
    const kept = together(many);
    expect(kept).toHaveLength(500);
    expect(kept).toEqual(together(many.reverse()));
    expect(withOtherVersion(kept, version('older than all', 1, 'AA'))).toBe(kept);
    const long = Array.from({ length: 12 }, (_, index) =>
      version(String(index).padEnd(1_000_000), 1 + index),
    );
    expect(together(long).map(({ at }) => at)).toEqual(long.slice(2).map(({ at }) => at));
  });
});
