import { describe, expect, it } from 'vitest';
import { readHeight } from '#tools/commands/tools/readHeight';

describe('readHeight(text)', () => {
  it('reads centimetres, and nothing where nothing is said', () => {
    expect(readHeight('172')).toEqual({ bodyHeightCm: 172 });
    expect(readHeight('165.5')).toEqual({ bodyHeightCm: 165.5 });
    expect(readHeight(undefined)).toEqual({});
  });

  it.each(['', 'tall', '1.72', '300', '-170', 'NaN'])('refuses "%s" in one line', (text) => {
    expect(() => readHeight(text)).toThrow(/must be a body height from 80 to 250 cm/);
  });
});
