import { Problem } from '#core/problem';
import { publicKeySchema } from '../schema/publicKeySchema';
import { plainInitials, type Colleague } from './peopleNote';

const marker = 'overfoot-key';
const version = 1;
const whatNext = 'Ask your colleague to show “My key” again.';
/** Initials, escaped, and a key take far less, characters. */
export const longestKeyCard = 1000;

/** A public key with its owner's initials, as one line: for a file, a code, or to be pasted. */
export function keyCardOf({ initials, key }: Colleague): string {
  return `${marker}:${version}:${encodeURIComponent(initials)}:${key}`;
}

/**
 * Reads an untrusted line.
 *
 * @throws Problem  with a sentence that says what is wrong and what to do
 */
export function readKeyCard(text: string): Colleague {
  const wrong = (sentence: string) => new Problem('file', `${sentence} ${whatNext}`);
  const line = text.trim();
  const [format, number = '', escaped = '', key = '', ...more] = line.split(':');
  if (line.length > longestKeyCard || format !== marker || !/^\d{1,6}$/.test(number))
    throw wrong('This is not a colleague’s key: it does not begin with “overfoot-key”.');
  if (Number(number) > version)
    throw new Problem(
      'file',
      `This key is of version ${number}; this program reads up to ${version}. Update the program.`,
    );
  const initials = plainInitials(unescaped(escaped));
  if (more.length > 0 || initials === '' || !publicKeySchema.safeParse(key).success)
    throw wrong('This key is not whole: a part of it is missing or was changed.');
  return { initials, key };
}

function unescaped(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return '';
  }
}
