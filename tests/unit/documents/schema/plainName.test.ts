import { describe, expect, it } from 'vitest';
import { mixesAlphabets, plainName } from '#documents/schema/plainName';

describe('plainName(text)', () => {
  it.each([
    ['zero width', 'Grey\u200b Otter\u2060 3'],
    ['bidirectional', '\u202eGrey Otter 3\u202c'],
    ['control', 'Grey\u0007 Otter\u0000 3'],
    ['wide letters', 'Ｇｒｅｙ Otter ３'],
    ['spaces', '  Grey\u00a0Otter\t3 '],
    ['a soft hyphen', 'Grey Ot\u00adter 3'],
    ['a filler', 'Grey Otter 3\u3164'],
  ])('takes out what is not seen: %s', (_, text) => {
    expect(plainName(text)).toBe('Grey Otter 3');
  });

  it('leaves letters of other languages as they are, and nothing where nothing is seen', () => {
    expect(plainName('Zoë Ångström 李')).toBe('Zoë Ångström 李');
    expect(plainName(' \u200b\u202e ')).toBe('');
  });
});

describe('mixesAlphabets(name)', () => {
  it('finds a Cyrillic letter among Latin ones', () => {
    expect(mixesAlphabets('Gr\u0435y Otter 3')).toBe(true);
    expect(mixesAlphabets('Grey Otter 3')).toBe(false);
    expect(mixesAlphabets('Серая выдра 3')).toBe(false);
  });
});
