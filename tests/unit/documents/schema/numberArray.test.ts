import { describe, expect, it } from 'vitest';
import { numberArray } from '#documents/schema/numberArray';
import { z } from '#documents/schema/zod';

const schema = z.strictObject({ px: numberArray({ min: -2, max: 7, most: 4 }) });
const faultOf = (px: unknown) => {
  const { error } = schema.safeParse({ px });
  return error === undefined ? null : [error.issues[0]?.path.join('.'), error.issues[0]?.message];
};

describe('numberArray({ min, max, most })', () => {
  it('lets numbers within the bounds through, the very same array', () => {
    const px = [-2, 0, 6.5, 7];
    expect(schema.parse({ px }).px).toBe(px);
    expect(faultOf([])).toBeNull();
  });

  it('names the first number that is beyond them, or is none', () => {
    expect(faultOf([1, -2.1])).toEqual(['px.1', 'expected a number from -2 to 7']);
    expect(faultOf([1, 2, 7.1, 9])).toEqual(['px.2', 'expected a number from -2 to 7']);
    for (const one of [NaN, Infinity, '3', null, undefined, {}]) expect(faultOf([1, one])?.[0]).toBe('px.1');
  });

  it('treats a gap as not a number', () => {
    const px = [1, 2, 3];
    delete px[1];
    expect(faultOf(px)?.[0]).toBe('px.1');
  });

  it('accepts at most the given count, and only arrays', () => {
    expect(faultOf([1, 1, 1, 1, 1])).toEqual(['px', 'more than 4 numbers']);
    for (const value of [null, 'abc', { length: 1, 0: 1 }, new Float64Array(2)]) {
      expect(faultOf(value)).toEqual(['px', 'expected an array']);
    }
  });
});
