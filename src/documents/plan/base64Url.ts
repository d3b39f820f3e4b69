import { base64urlnopad } from '@scure/base';

/** Bytes as text that stands in an address as it is (RFC 4648, 5, without padding). */
export function toBase64Url(bytes: Uint8Array): string {
  return base64urlnopad.encode(bytes);
}

/** @returns null where it is not such a text */
export function fromBase64Url(text: string): Uint8Array | null {
  try {
    return base64urlnopad.decode(text);
  } catch {
    return null;
  }
}
