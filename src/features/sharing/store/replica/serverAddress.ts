import { Problem } from '#core/problem';

const wrong = (sentence: string) => new Problem('file', sentence);

/**
 * Reads the address of the practice's database.
 *
 * @param allowed  origins to which this build may connect
 * @throws Problem  with a sentence that says what is wrong and what to do
 */
export function readServerAddress(text: string, allowed: readonly string[]): string {
  let address: URL;
  try {
    address = new URL(text.trim());
  } catch {
    throw wrong('This is not an address. It looks like https://share.example.org/practice-1.');
  }
  const isHere = ['localhost', '127.0.0.1', '[::1]'].includes(address.hostname);
  if (address.protocol !== 'https:' && !(address.protocol === 'http:' && isHere))
    throw wrong('The address must begin with https://.');
  if (address.username !== '' || address.password !== '')
    throw wrong('Leave user and password out of the address, and enter them below.');
  if (
    address.search !== '' ||
    address.hash !== '' ||
    !/^\/(?:[\w.~-]+\/)*[a-z][a-z0-9_$()+-]*\/?$/.test(address.pathname)
  )
    throw wrong('The address must end with the name of the practice’s database, such as /practice-1.');
  if (!allowed.includes(address.origin))
    throw wrong(
      `This build of the program may not connect to ${address.origin}. It may connect to ${allowed.join(' and ')}.`,
    );
  return address.origin + address.pathname.replace(/\/$/, '');
}

/**
 * The origins to which a page may connect: those of `connect-src` in its own policy.
 *
 * @param policy  of the page's `<meta>`; null where it has none, as while developing
 * @param own  the page's own origin
 */
export function allowedOrigins(policy: string | null, own: string): string[] {
  const [, sources = "'self'"] = /(?:^|;)\s*connect-src ([^;]*)/.exec(policy ?? '') ?? [];
  const named = sources.split(' ').filter((source) => /^https?:\/\/[^/*]+$/.test(source));
  return [...named, own];
}
