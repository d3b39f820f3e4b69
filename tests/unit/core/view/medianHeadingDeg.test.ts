import { describe, expect, it } from 'vitest';
import { medianHeadingDeg } from '#core/view/medianHeadingDeg';
import { emptyPath } from '#core/view/path';

const from = emptyPath(4);
/** Headings 10, 20, 60 and 80 degrees. */
const to = emptyPath(4);
[10, 20, 60, 80].forEach((deg, i) => {
  to.x[i] = Math.sin((deg * Math.PI) / 180);
  to.z[i] = -Math.cos((deg * Math.PI) / 180);
});

describe('medianHeadingDeg(from, to, when)', () => {
  it('takes the middle of the samples that count', () => {
    expect(medianHeadingDeg(from, to, Uint8Array.of(1, 1, 1, 0))).toBeCloseTo(20, 12);
    expect(medianHeadingDeg(from, to, Uint8Array.of(1, 1, 1, 1))).toBeCloseTo(40, 12);
  });

  it('is null where nothing counts', () => {
    expect(medianHeadingDeg(from, to, new Uint8Array(4))).toBeNull();
  });
});
