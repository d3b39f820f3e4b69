import { describe, expect, it } from 'vitest';
import { longestShuffle } from '#core/segmentation/findRepetitions';
import { inPlace } from '#core/segmentation/inPlace';

const path = (...x: number[]) => ({ x: Float64Array.from(x), y: new Float64Array(x.length) });

describe('inPlace(feet, samples)', () => {
  it('marks samples in which at least one foot is in its usual place', () => {
    // Walked in during the first two samples; in the last the left foot is out to the side.
    const feet = [path(-2, -1, 0, 0, 0, 0, 0.6), path(-2, -1.2, 0.2, 0.2, 0.2, 0.2, 0.2)];
    expect([...inPlace(feet, 7)]).toEqual([0, 0, 1, 1, 1, 1, 1]);
  });

  it('goes by both directions, from the middle of all places', () => {
    // The middle of x is 0.4, that of y 0.9: the third sample is .2 higher, the fourth .3, the last .3 and .4 away.
    const foot = { x: Float64Array.of(0.4, 0.4, 0.4, 0.4, 0.7), y: Float64Array.of(0.9, 0.9, 0.7, 0.6, 1.3) };
    expect([...inPlace([foot], 5)]).toEqual([1, 1, 1, 0, 0]);
  });

  it('takes a foot that is a whole shuffle away for out of place', () => {
    expect([...inPlace([path(0, 0, 0, longestShuffle, longestShuffle - 0.001)], 5)]).toEqual([1, 1, 1, 0, 1]);
  });
});
