import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isProblem } from '#core/problem';
import { keyCardOf, readKeyCard } from '#documents/practice/keyCard';
import { nobody, readPeople, withColleague, withoutColleague } from '#documents/practice/peopleNote';

const keyOf = (letter: string) => `age1${letter.repeat(58)}`;
const at = '2026-05-06T07:08:09.000Z';

function problemOf(text: string): string | null {
  try {
    readKeyCard(text);
    return null;
  } catch (error) {
    if (isProblem(error, 'file')) return error.message;
    throw error;
  }
}

describe('keyCardOf(colleague), readKeyCard(text)', () => {
  it.each(['KN', 'Ü. Ñ', 'a:b', '100%'])('give back initials %j with their key', (initials) => {
    const card = keyCardOf({ initials, key: keyOf('q') });
    expect(card).toMatch(/^overfoot-key:1:[^:\s]+:age1q+$/);
    expect(readKeyCard(`\n ${card} \n`)).toEqual({ initials, key: keyOf('q') });
  });

  it('say what is wrong with anything else', () => {
    const card = keyCardOf({ initials: 'KN', key: keyOf('q') });
    for (const text of ['', keyOf('q'), 'AGE-SECRET-KEY-1X', 'plan=1.a.b', `${card}${'x'.repeat(1000)}`])
      expect(problemOf(text)).toMatch(/not a colleague’s key.* Ask your colleague/);
    for (const text of [card.slice(0, -1), `${card}:x`, card.replace('KN', ''), card.replace('KN', '%E0')])
      expect(problemOf(text)).toMatch(/not whole.* Ask your colleague/);
    expect(problemOf(card.replace(':1:', ':2:'))).toMatch(/version 2; .* Update the program/);
  });

  it('end in a colleague or a sentence, whatever is pasted', () => {
    fc.assert(fc.property(fc.string(), (text) => void problemOf(`overfoot-key:1:${text}`)));
  });
});

describe('the people of a practice', () => {
  const kn = { initials: 'KN', key: keyOf('q') };
  const ab = { initials: 'AB', key: keyOf('p') };
  const both = withColleague(withColleague(nobody, kn, at), ab, at);

  it('are listed by their initials, and read as they were written', () => {
    expect(both.colleagues).toEqual([ab, kn]);
    expect(readPeople(JSON.stringify(both))).toEqual(both);
    expect(readPeople(null)).toEqual(nobody);
  });

  it.each(['{', '{"format":"overfoot-people","version":9}', '7'])('are not guessed from %j', (text) => {
    expect(readPeople(text)).toBeNull();
  });

  it('leave a trace of who was taken out, which goes once they are back', () => {
    const without = withoutColleague(both, kn.key, at);
    expect(without).toMatchObject({ colleagues: [ab], takenOut: [{ ...kn, at }] });
    expect(withoutColleague(without, kn.key, at)).toBe(without);
    expect(withColleague(without, kn, at)).toEqual(both);
  });

  it('have one key each: a new one takes the place of the earlier', () => {
    const next = withColleague(both, { initials: 'KN', key: keyOf('z') }, at);
    expect(next.colleagues.map(({ key }) => key)).toEqual([ab.key, keyOf('z')]);
    expect(next.takenOut).toEqual([{ ...kn, at }]);
  });
});
