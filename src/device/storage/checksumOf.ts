import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';

const encoder = new TextEncoder();
/** Stands for what is missing among numbers, which JSON has none of like it. NaN would have more than one bit pattern. */
const gap = Infinity;
/** Text is hashed in pieces of about this length: one at a time would take longer than the hashing. */
const pieceLength = 65_536;

/**
 * SHA-256 of a record's content: the same for a copy of it, another one as soon as anything in it changes. The
 * order of fields, and fields that are undefined, make no difference.
 *
 * @param value  plain data as a database keeps it: objects, arrays, typed arrays, texts, numbers
 */
export function checksumOf(value: unknown): string {
  const hash = sha256.create();
  let waiting = '';
  const flush = () => {
    hash.update(encoder.encode(waiting));
    waiting = '';
  };
  const put = (text: string) => {
    waiting += text;
    if (waiting.length > pieceLength) flush();
  };
  /** Each part is preceded by what it is and how long, so that no two contents run into the same bytes. */
  const head = (kind: string, length: number) => put(`${kind}${length} `);
  const putBytes = (bytes: Uint8Array) => {
    flush();
    hash.update(bytes);
  };
  const add = (part: unknown): void => {
    if (ArrayBuffer.isView(part)) {
      head(part.constructor.name, part.byteLength);
      putBytes(new Uint8Array(part.buffer, part.byteOffset, part.byteLength));
    } else if (Array.isArray(part)) {
      if (part.every((one) => one === null || typeof one === 'number')) {
        head('numbers', part.length); // In one go: joints are millions of them.
        putBytes(new Uint8Array(Float64Array.from(part, (one: number | null) => one ?? gap).buffer));
      } else {
        head('array', part.length);
        for (const one of part) add(one);
      }
    } else if (typeof part === 'object' && part !== null) {
      const fields = Object.entries(part).filter(([, field]) => field !== undefined);
      fields.sort(([one], [other]) => (one < other ? -1 : 1));
      head('object', fields.length);
      for (const [name, field] of fields) {
        add(name);
        add(field);
      }
    } else {
      const text = String(part);
      head(typeof part, byteLength(text));
      put(text);
    }
  };
  add(value);
  flush();
  return bytesToHex(hash.digest());
}

function byteLength(text: string): number {
  for (let i = 0; i < text.length; i++) if (text.charCodeAt(i) > 127) return encoder.encode(text).length;
  return text.length;
}
