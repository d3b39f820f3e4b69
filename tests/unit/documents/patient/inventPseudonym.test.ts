import { describe, expect, it } from 'vitest';
import { inventPseudonym } from '#documents/patient/inventPseudonym';

describe('inventPseudonym(known, random)', () => {
  it('makes up one that nobody has', () => {
    expect(inventPseudonym([], () => 0)).toBe('Amber Badger 10');
    expect(inventPseudonym([], () => 0.999)).toBe('Silver Tern 99');
    let turn = 0;
    // Each takes three draws; the first is taken.
    expect(inventPseudonym(['Amber Badger 10'], () => (turn++ < 3 ? 0 : 0.5))).toBe('Ivory Lynx 55');
  });

  it('still finds one where chance always gives the same', () => {
    expect(inventPseudonym(['Amber Badger 10'], () => 0)).toBe('Amber Badger 100');
  });
});
