import { describe, expect, it } from 'vitest';
import { bodyHeightRangeCm, legLengthCm } from '#core/protocol/bodyHeight';

describe('legLengthCm(bodyHeightCm)', () => {
  it('is thigh and shank by the shares of Drillis & Contini, .245 and .246 of body height', () => {
    expect(legLengthCm(170)).toBeCloseTo(41.65 + 41.82, 9);
    expect(legLengthCm(bodyHeightRangeCm.min)).toBeCloseTo(80 * (0.245 + 0.246), 9);
  });
});
