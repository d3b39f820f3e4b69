import { describe, expect, it } from 'vitest';
import { shareBeyond } from '#core/measures/shareBeyond';

const study = { mean: 8.4, sd: 5.1 };

describe('shareBeyond(healthy, end, limit)', () => {
  it('is half at the mean, and falls as the limit widens', () => {
    expect(shareBeyond(study, 'most', 8.4)).toBeCloseTo(0.5, 12);
    // One standard deviation above the mean: 1 - .8413.
    expect(shareBeyond(study, 'most', 13.5)).toBeCloseTo(0.1587, 4);
    expect(shareBeyond(study, 'least', 3.3)).toBeCloseTo(0.1587, 4);
  });
});
