import { base64urlnopad } from '@scure/base';

/** Bytes as text that needs no escaping in an address (RFC 4648, 5, without padding). */
export function toBase64Url(bytes: Uint8Array): string {
  return base64urlnopad.encode(bytes);
}

/** @returns null where the text is not base64url */
export function fromBase64Url(text: string): Uint8Array | null {
  try {
    return base64urlnopad.decode(text);
  } catch {
    return null;
  }
}
