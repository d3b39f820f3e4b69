import { sha256 } from '@noble/hashes/sha2.js';
import { utf8ToBytes } from '@noble/hashes/utils.js';
import { wordlist } from '@scure/bip39/wordlists/english.js';

/** 55 bits: a key with the same five words takes some 10^16 tries to find. */
const wordCount = 5;
/** 2048 words (BIP 39). */
const bitsOfWord = 11;

/** A key as words that two people can compare: the beginning of its SHA-256, 11 bits a word. */
export function keyWords(key: string): string {
  const hash = sha256(utf8ToBytes(key));
  const bits = [...hash.subarray(0, 8)].map((byte) => byte.toString(2).padStart(8, '0')).join('');
  return Array.from({ length: wordCount }, (_, at) => {
    const from = at * bitsOfWord;
    return wordlist[parseInt(bits.slice(from, from + bitsOfWord), 2)]!;
  }).join(' ');
}
