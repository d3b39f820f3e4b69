/** Shorter passphrases can be guessed by trying: common practice, no source. */
const shortestPassphrase = 12;
/**
 * log10 of the guesses that a passphrase must withstand. One guess at a file takes about a second (age's scrypt),
 * so 10^12 keep ten thousand computers busy for three years.
 */
const leastGuessesLog10 = 12;

const advice = 'Take four or five words that do not belong together.';

/** @returns  what to do about a passphrase that was chosen and typed again; null where it can be taken */
export async function passphraseFault(passphrase: string, repeated: string): Promise<string | null> {
  return (
    (await weakPassphrase(passphrase)) ??
    (passphrase === repeated ? null : 'The two are not the same. Type the same passphrase twice.')
  );
}

/** @returns  why a passphrase would be guessed, and what to do; null where it is strong enough */
export async function weakPassphrase(passphrase: string): Promise<string | null> {
  if (passphrase.length < shortestPassphrase) {
    return `Use at least ${shortestPassphrase} characters. ${advice}`;
  }
  // Its list of words is large, and few passphrases are made.
  const { estimate } = await import('./estimatePassphrase');
  const { guessesLog10, patterns } = estimate(passphrase);
  if (guessesLog10 >= leastGuessesLog10) return null;
  return `This passphrase is easy to guess: ${reasonOf(patterns)}. ${advice}`;
}

function reasonOf(patterns: readonly string[]): string {
  if (patterns.includes('repeat')) return 'it repeats itself';
  if (patterns.includes('sequence') || patterns.includes('spatial'))
    return 'it follows the keyboard or the alphabet';
  if (patterns.includes('date')) return 'there is a date in it';
  if (patterns.includes('dictionary')) return 'it is among the most used passwords, or close to one';
  return 'it is too short for what it is made of';
}
