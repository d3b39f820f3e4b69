import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { canonicalText } from '../reading/canonicalText';
import type { SharedKind } from './sharedHead';

/** Fields whose order means nothing; all lists of a patient's record and of the library are kept by entry. */
const unordered: Partial<Record<SharedKind, (name: string) => boolean>> = {
  patient: () => true,
  library: () => true,
  session: (name) => name === 'settles',
};

/**
 * Which version of a document it is: the same on every device that holds the same, in whatever order. A patient's record
 * has an id of its own on each device, which does not count.
 */
export function contentHash(kind: SharedKind, document: object): string {
  const isUnordered = unordered[kind];
  const fields = Object.entries(document).flatMap(([name, value]: [string, unknown]) => {
    if (kind === 'patient' && name === 'id') return [];
    if (!Array.isArray(value) || isUnordered?.(name) !== true) return [[name, value]];
    return [[name, (value as unknown[]).map(canonicalText).sort()]];
  });
  const text = canonicalText(Object.fromEntries(fields));
  return bytesToHex(sha256(utf8ToBytes(text))).slice(0, 20);
}
