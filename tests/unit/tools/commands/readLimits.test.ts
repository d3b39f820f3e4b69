import { describe, expect, it } from 'vitest';
import { defaultLimits } from '#core/protocol/limits';
import { readLimits } from '#tools/commands/tools/readLimits';

describe('readLimits(words)', () => {
  it('keeps the defaults where nothing is named', () => {
    expect(readLimits([])).toEqual(defaultLimits);
  });

  it('sets both directions at once, or one', () => {
    expect(readLimits(['knee=12.5'])).toEqual({ 'knee-angle': { least: -12.5, most: 12.5 } });
    expect(readLimits(['knee=12', 'knee-outward=7'])).toEqual({ 'knee-angle': { least: -7, most: 12 } });
    expect(readLimits(['knee-inward=30'])['knee-angle'].most).toBe(30);
  });

  it.each(['knee', 'knee=', 'knee=ten', 'knee=0.5', 'knee=31', 'knee=-3', 'knee=NaN'])(
    'refuses %s',
    (word) => {
      expect(() => readLimits([word])).toThrow(/from 1 to 30 degrees/);
    },
  );

  it('limits other measures in degrees or percent, either way', () => {
    expect(readLimits(['trunk-lean-most=12', 'trunk-lean-least=-8', 'depth-least=20'])).toEqual({
      ...defaultLimits,
      'trunk-lean': { most: 12, least: -8 },
      depth: { least: 0.2 },
    });
  });

  it.each(['trunk-lean-most=31', 'trunk-lean-most=0', 'trunk-lean-most=', 'depth-least=-5'])(
    'refuses %s',
    (word) => {
      expect(() => readLimits([word])).toThrow(/must be from \d+ to \d+ (degrees|%)/);
    },
  );

  it.each(['hip=5', 'trunk-lean=5', '=5', 'toString=4'])('does not know %s', (word) => {
    expect(() => readLimits([word])).toThrow(/is not known/);
  });
});
