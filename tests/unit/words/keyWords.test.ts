import { describe, expect, it } from 'vitest';
import { keyWords } from '#words/keyWords';

describe('keyWords(key)', () => {
  it('gives five words from the beginning of the SHA-256', () => {
    // The SHA-256 of the empty text begins with e3b0c442 98fc1c (FIPS 180-4, NIST's examples). By hand, 11 bits a word:
    // 11100011101 = 1821, 10000110001 = 1073, 00010000101 = 133, 00110001111 = 399, 11000001110 = 1550. These are the
    // words of BIP 39's English list with those numbers, counted from 0.
    expect(keyWords('')).toBe('together mail awful cradle scrub');
  });

  it('differs for other keys', () => {
    expect(keyWords('age1a')).not.toBe(keyWords('age1b'));
  });
});
