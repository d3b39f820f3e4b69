import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checksumOf } from '#device/storage/checksumOf';

describe('checksumOf(value)', () => {
  it('is the SHA-256 of what the value is, how long, and its bytes', () => {
    expect(checksumOf('knee')).toBe(bytesToHex(sha256(new TextEncoder().encode('string4 knee'))));
  });

  it('is the same for a copy', () => {
    fc.assert(
      fc.property(fc.anything({ withTypedArray: true, maxDepth: 3 }), (value) => {
        expect(checksumOf(structuredClone(value))).toBe(checksumOf(value));
      }),
    );
  });

  it('does not depend on the order of fields, nor on those that are undefined', () => {
    expect(checksumOf({ a: 1, b: { c: 2, d: 3 } })).toBe(
      checksumOf({ b: { d: 3, c: 2, e: undefined }, a: 1 }),
    );
  });

  it.each([
    [
      [1, 2, 3],
      [1, 2, 4],
    ],
    [
      [1, null],
      [1, 0],
    ],
    [{ a: 1 }, { b: 1 }],
    [{ a: 1 }, { a: '1' }],
    [
      ['ab', 'c'],
      ['a', 'bc'],
    ],
    [[[1], 2], [[1, 2]]],
    [Float64Array.of(1.5), Float64Array.of(1.25)],
    [Float64Array.of(0), new Uint8Array(8)],
    [null, 'null'],
    [[], {}],
  ])('is another one for %j and %j', (one, other) => {
    expect(checksumOf(one)).not.toBe(checksumOf(other));
  });
});
