import { describe, expect, it } from 'vitest';
import { addTurningPoint } from '#core/segmentation/addTurningPoint';

function turningPoints(...values: number[]): number[] {
  const points: number[] = [];
  for (const value of values) addTurningPoint(points, value);
  return points;
}

describe('addTurningPoint(points, value)', () => {
  it('keeps the first two values, and where the movement turns', () => {
    expect(turningPoints(4)).toEqual([4]);
    expect(turningPoints(4, 7)).toEqual([4, 7]);
    expect(turningPoints(4, 7, 5, 6)).toEqual([4, 7, 5, 6]);
  });

  it('replaces the last value while the movement continues, up and down', () => {
    expect(turningPoints(1, 2, 3, 5)).toEqual([1, 5]);
    expect(turningPoints(5, 3, 2, 1)).toEqual([5, 1]);
    expect(turningPoints(-1, -3, -4, 2, 6)).toEqual([-1, -4, 6]);
  });

  it('keeps one point of a stretch without movement', () => {
    expect(turningPoints(2, 2, 2)).toEqual([2, 2]);
    expect(turningPoints(2, 2, 5)).toEqual([2, 5]);
    expect(turningPoints(1, 3, 3, 3, 2)).toEqual([1, 3, 2]);
    expect(turningPoints(3, 1, 1, 2)).toEqual([3, 1, 2]);
  });
});
