import { describe, expect, it } from 'vitest';
import { defaultLimits, limitRangeDeg } from '../../../src/protocol/limits';

describe('defaultLimits', () => {
  it('lie within the range that makes sense', () => {
    for (const deg of Object.values(defaultLimits)) {
      expect(deg).toBeGreaterThanOrEqual(limitRangeDeg.min);
      expect(deg).toBeLessThanOrEqual(limitRangeDeg.max);
    }
  });

  it('are 10 degrees inward, where the step-down study begins its dynamic valgus category', () => {
    expect(defaultLimits.kneeInwardDeg).toBe(10);
  });
});
