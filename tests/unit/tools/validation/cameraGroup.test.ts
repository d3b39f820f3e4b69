import { describe, expect, it } from 'vitest';
import { cameraGroup } from '#tools/validation/cameraGroup';

describe('cameraGroup({ yawDeg, rollDeg })', () => {
  it.each([
    [0, 0, 'square'],
    [-1.9, 1.9, 'square'],
    [2, 0, 'upTo10'],
    [0, 3, 'upTo10'],
    [-10, 0, 'upTo10'],
    [10.5, 0, 'upTo20'],
    [20, 0, 'upTo20'],
    [-20.5, 0, 'beyond20'],
  ])('puts yaw %d and roll %d into %s', (yawDeg, rollDeg, group) => {
    expect(cameraGroup({ yawDeg, rollDeg })).toBe(group);
  });
});
