import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arrowShown } from '#features/home/placing/arrowShown';
import type { PlacingArrow } from '#features/home/placing/placing';

const aside = ['left', 'right', 'turn-left', 'turn-right', 'tip-left', 'tip-right'] as const;
const others = ['up', 'down', 'closer', 'farther', 'none'] as const;

describe('arrowShown(arrow, isMirrored)', () => {
  it('leaves every arrow as it is in a mirror', () => {
    fc.assert(
      fc.property(fc.constantFrom<PlacingArrow>(...aside, ...others), (arrow) => {
        expect(arrowShown(arrow, true)).toBe(arrow);
      }),
    );
  });

  it('turns what points aside round where the picture is not mirrored', () => {
    for (const arrow of aside) {
      const shown = arrowShown(arrow, false);
      expect([arrow.replace('left', 'right'), arrow.replace('right', 'left')]).toContain(shown);
      expect(shown).not.toBe(arrow);
    }
    for (const arrow of others) expect(arrowShown(arrow, false)).toBe(arrow);
  });
});
