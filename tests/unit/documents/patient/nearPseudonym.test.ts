import { describe, expect, it } from 'vitest';
import { nearPseudonym } from '#documents/patient/nearPseudonym';

const known = ['Blue Heron 7', 'Quiet Otter 34', 'Al'];

describe('nearPseudonym(typed, known)', () => {
  it.each([
    ['blue heron 7', 'Blue Heron 7'],
    ['BlueHeron7', 'Blue Heron 7'],
    ['Blue Heron-7', 'Blue Heron 7'],
    ['Blue Hreon 7', 'Blue Heron 7'], // Two neighbours swapped: one slip.
    ['Quit Oter 34', 'Quiet Otter 34'], // Two letters left out.
    ['Blue Heron 8', 'Blue Heron 7'],
  ])('asks for %s whether %s is meant', (typed, near) => {
    expect(nearPseudonym(typed, known)).toBe(near);
  });

  it.each(['Blue Heron 7', ' Blue  Heron 7 ', 'Red Lynx 12', 'Quet Otr 3', 'Bo', ''])(
    'asks nothing for %j',
    (typed) => expect(nearPseudonym(typed, known)).toBeNull(),
  );

  it('takes the nearest of several', () => {
    expect(nearPseudonym('Grey Otter 12', ['Grey Otter 34', 'Grey Otter 13'])).toBe('Grey Otter 13');
  });
});
