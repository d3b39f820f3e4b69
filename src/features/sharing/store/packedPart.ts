import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import { deflateSync, Inflate, strFromU8, strToU8 } from 'fflate';
import { Problem } from '#core/problem';

/** So much is unpacked at a time, so that a bomb is noticed after one piece. */
const pieceBytes = 16_384;

/** A document as a part of a file, and what the file's first line says of it. */
export interface PackedPart {
  part: Uint8Array<ArrayBuffer>;
  facts: { bytes: number; unpackedBytes: number; sha256: string };
}

/** Packs a document: JSON, deflated. */
export function packPart(document: unknown): PackedPart {
  const text = strToU8(JSON.stringify(document));
  const part = deflateSync(text) as Uint8Array<ArrayBuffer>;
  return {
    part,
    facts: { bytes: part.length, unpackedBytes: text.length, sha256: bytesToHex(sha256(part)) },
  };
}

/**
 * The text of a packed document.
 *
 * @param whatNext  what to do where it can't be unpacked
 * @throws Problem  where it is not exactly as long as it says; no more than that is ever unpacked
 */
export async function unpackPart(blob: Blob, unpackedBytes: number, whatNext: string): Promise<string> {
  const wrong = new Problem('file', `A document in it can’t be unpacked. ${whatNext}`);
  const packed = new Uint8Array(await blob.arrayBuffer());
  const unpacked = new Uint8Array(unpackedBytes);
  let length = 0;
  const stream = new Inflate((piece) => {
    if (length + piece.length > unpackedBytes) throw wrong;
    unpacked.set(piece, length);
    length += piece.length;
  });
  try {
    for (let from = 0; from < packed.length; from += pieceBytes)
      stream.push(packed.subarray(from, from + pieceBytes), from + pieceBytes >= packed.length);
  } catch {
    throw wrong;
  }
  if (length !== unpackedBytes) throw wrong;
  return strFromU8(unpacked);
}

/** SHA-256 of a blob, read piece by piece. */
export async function hashOf(blob: Blob): Promise<string> {
  const hash = sha256.create();
  const reader = blob.stream().getReader();
  for (let next = await reader.read(); !next.done; next = await reader.read()) hash.update(next.value);
  return bytesToHex(hash.digest());
}
