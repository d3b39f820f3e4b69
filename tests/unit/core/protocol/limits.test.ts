import { describe, expect, it } from 'vitest';
import { limitEnds } from '#core/measures/limitEnd';
import { findMeasure, measureIds, type MeasureId } from '#core/measures/measures';
import {
  addedMeasures,
  defaultLimits,
  limitedMeasures,
  limitsInRange,
  withLimit,
} from '#core/protocol/limits';
import { sameLimits } from '#core/protocol/sameLimits';

describe('defaultLimits', () => {
  it('lie within the range that makes sense', () => {
    expect(limitsInRange(defaultLimits)).toEqual(defaultLimits);
    // Limits outside 1 to 30 degrees make no sense for a knee that bends forward.
    const { least, most } = findMeasure('knee-angle').limits;
    expect([least.min, least.max, most.min, most.max]).toEqual([-30, -1, 1, 30]);
  });

  it('are 10 degrees either way: inward, where the step-down study begins its dynamic valgus category', () => {
    expect(defaultLimits['knee-angle']).toEqual({ least: -10, most: 10 });
  });

  it('limit nothing but the knee angle', () => {
    expect(limitedMeasures(defaultLimits)).toEqual(['knee-angle']);
    expect(addedMeasures(defaultLimits)).toEqual([]);
  });
});

describe('findMeasure(id).limits', () => {
  const rad = Math.PI / 180;
  // The geometry that each proposal names, to the percent in which it is set.
  const geometry: [MeasureId, 'least' | 'most', number][] = [
    ['knee-off-line', 'most', 0.5 * Math.sin(5 * rad)],
    ['knee-over-foot', 'most', 0.055 / 2 / (0.245 + 0.246)], // Drillis & Contini, from memory
    ['hip-over-knee', 'most', 0.5 * Math.sin(10 * rad)],
    ['depth', 'least', 1 - Math.cos(22.5 * rad)],
    ['depth', 'most', 1 - Math.cos(45 * rad)],
  ];
  it.each(geometry)('propose for %s at %s what the geometry gives', (id, end, share) => {
    expect(findMeasure(id).limits[end].first).toBe(Math.round(100 * share) / 100);
  });

  it('propose values that can be set, each with its source', () => {
    for (const id of measureIds) {
      for (const end of limitEnds) {
        const { min, max, step, first, source } = findMeasure(id).limits[end];
        expect(first).toBeGreaterThanOrEqual(min);
        expect(first).toBeLessThanOrEqual(max);
        expect(step).toBeLessThan(max - min);
        expect(source).toMatch(/no source|no published value|10°|study| \d{4}/);
        expect(source).not.toMatch(/memory/);
      }
      expect(findMeasure(id).limits.least.first).toBeLessThan(findMeasure(id).limits.most.first);
    }
  });
});

describe('withLimit(limits, measure, end, value)', () => {
  it('sets, moves and removes one limit, and leaves the others', () => {
    const one = withLimit(defaultLimits, 'trunk-lean', 'most', 12);
    const two = withLimit(one, 'trunk-lean', 'least', -8);
    expect(two).toEqual({ ...defaultLimits, 'trunk-lean': { most: 12, least: -8 } });
    const three = withLimit(two, 'depth', 'least', 0.1);
    expect(addedMeasures(three)).toEqual(['trunk-lean', 'depth']);
    expect(withLimit(two, 'trunk-lean', 'least', null)).toEqual(one);
    expect(withLimit(one, 'trunk-lean', 'most', null)).toEqual(defaultLimits);
    expect(withLimit(defaultLimits, 'depth', 'least', null)).toEqual(defaultLimits);
  });

  it('restores the first limit where a measure always has one', () => {
    const moved = withLimit(defaultLimits, 'knee-angle', 'least', -4);
    expect(moved).toEqual({ 'knee-angle': { least: -4, most: 10 } });
    expect(withLimit(moved, 'knee-angle', 'least', null)).toEqual(defaultLimits);
  });

  it('keeps a limit in its range and on its side of the opposite one', () => {
    expect(withLimit(defaultLimits, 'trunk-lean', 'most', 99)['trunk-lean']).toEqual({ most: 30 });
    expect(withLimit(defaultLimits, 'pelvic-drop', 'least', 3)['pelvic-drop']).toEqual({ least: -1 });
    const atMost = withLimit(defaultLimits, 'depth', 'most', 0.3);
    expect(withLimit(atMost, 'depth', 'least', 0.4).depth).toEqual({ most: 0.3, least: 0.3 });
  });
});

describe('sameLimits(a, b)', () => {
  it('compares every limit', () => {
    for (const id of measureIds)
      for (const end of limitEnds) {
        const other = withLimit(defaultLimits, id, end, findMeasure(id).limits[end].first * 1.1);
        expect(sameLimits(defaultLimits, other)).toBe(false);
        expect(sameLimits(other, { ...other })).toBe(true);
      }
    expect(sameLimits(defaultLimits, { ...defaultLimits, depth: {} })).toBe(true);
    expect(sameLimits(defaultLimits, withLimit(defaultLimits, 'knee-angle', 'least', -9))).toBe(false);
  });
});
