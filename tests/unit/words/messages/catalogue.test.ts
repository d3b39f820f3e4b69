import { describe, expect, it } from 'vitest';
import { english, type MessageKey } from '#words/messages/english';
import { spanish } from '#words/messages/spanish';
import { casesOf, format, placeholdersOf } from '../../../support/messageCases';

const keys = Object.keys(english) as MessageKey[];
const catalogues = [
  ['en-GB', english],
  ['es', spanish],
] as const;

/** Meanings of 'left' and 'right' that are no side. */
const noSide = /\bright (now|angle|after|for|thing)\b|\b(seconds?|time|you|has) left\b/gi;

/** The sides that a sentence names, in order. */
function sidesNamed(sentence: string): string[] {
  const words = sentence.replaceAll(noSide, '').toLowerCase();
  return [...words.matchAll(/\b(left|right)\b|(izquierd|derech)[oa]s?(?!\p{L})/gu)].map(([, side, lado]) =>
    side === 'left' || lado === 'izquierd' ? 'left' : 'right',
  );
}

const mirrored = (sides: readonly string[]) => sides.map((side) => (side === 'left' ? 'right' : 'left'));

describe('the catalogues', () => {
  it('have the same messages', () => {
    expect(Object.keys(spanish).sort()).toEqual([...keys].sort());
  });

  it.each(catalogues)(
    '%s: each message can be formatted for every class of plurals and every choice',
    (locale, all) => {
      for (const key of keys) {
        for (const values of casesOf(all[key])) {
          const text = format(all[key], locale, values);
          expect(text, key).not.toMatch(/[{}]|undefined|null|NaN/);
          expect(text, key).toBe(text.trim());
          expect(text, key).not.toMatch(/ {2}/);
          if (!key.endsWith('.cautions')) expect(text, key).not.toBe('');
        }
      }
    },
  );

  it('every placeholder stands in both languages', () => {
    for (const key of keys)
      expect([...placeholdersOf(spanish[key]).keys()].sort(), key).toEqual(
        [...placeholdersOf(english[key]).keys()].sort(),
      );
  });

  it('both distinguish the same choices', () => {
    const choices = (text: string) =>
      [...placeholdersOf(text)]
        .map(([name, values]) => [name, values.filter((value) => typeof value === 'string').sort()])
        .sort();
    for (const key of keys) expect(choices(spanish[key]), key).toEqual(choices(english[key]));
  });
});

describe('left and right', () => {
  const sided = keys.filter((key) =>
    casesOf(english[key]).some((values) => sidesNamed(format(english[key], 'en', values)).length > 0),
  );

  it('are named by some messages', () => {
    expect(sided.length).toBeGreaterThan(40);
  });

  it.each(keys)('%s names the same sides in the same order in both languages', (key) => {
    for (const values of casesOf(english[key]))
      expect(sidesNamed(format(spanish[key], 'es', values))).toEqual(
        sidesNamed(format(english[key], 'en', values)),
      );
  });

  it.each(keys.filter((key) => placeholdersOf(english[key]).has('side')))(
    '%s names the side that it is given, and the other way round for the other side',
    (key) => {
      for (const [locale, all] of catalogues) {
        for (const values of casesOf(all[key])) {
          const named = (side: string) => sidesNamed(format(all[key], locale, { ...values, side }));
          expect(named('left').length).toBeGreaterThan(0);
          expect(named('right')).toEqual(mirrored(named('left')));
        }
      }
    },
  );
});
