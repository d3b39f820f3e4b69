import { describe, expect, it } from 'vitest';
import { inPlace } from '#core/segmentation/inPlace';

const path = (...x: number[]) => ({ x: Float64Array.from(x), y: new Float64Array(x.length) });

describe('inPlace(feet, samples)', () => {
  it('marks samples in which at least one foot is in its usual place', () => {
    // Walked in during the first two samples; in the last the left foot is out to the side.
    const feet = [path(-2, -1, 0, 0, 0, 0, 0.6), path(-2, -1.2, 0.2, 0.2, 0.2, 0.2, 0.2)];
    expect([...inPlace(feet, 7)]).toEqual([0, 0, 1, 1, 1, 1, 1]);
  });
});
