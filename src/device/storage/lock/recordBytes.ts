import { base64 } from '@scure/base';

const arrays = { Float64Array, Float32Array, Uint8Array };
type ArrayName = keyof typeof arrays;

/** Replaces a typed array; no document has a field of this name. */
interface PackedArray {
  typedArray: ArrayName;
  base64: string;
}

/** A record as bytes: JSON, with typed arrays in it as text. */
export function bytesOfRecord(value: unknown): Uint8Array<ArrayBuffer> {
  const text = JSON.stringify(value, (_, field: unknown) => {
    if (!ArrayBuffer.isView(field)) return field;
    const bytes = new Uint8Array(field.buffer, field.byteOffset, field.byteLength);
    return { typedArray: field.constructor.name, base64: base64.encode(bytes) };
  });
  return new TextEncoder().encode(text);
}

/** @throws SyntaxError  where the bytes are not a record */
export function recordOfBytes(bytes: Uint8Array): unknown {
  return JSON.parse(new TextDecoder().decode(bytes), (_, field: unknown) =>
    isPacked(field) ? new arrays[field.typedArray](base64.decode(field.base64).slice().buffer) : field,
  );
}

function isPacked(field: unknown): field is PackedArray {
  return typeof field === 'object' && field !== null && 'typedArray' in field && 'base64' in field;
}
