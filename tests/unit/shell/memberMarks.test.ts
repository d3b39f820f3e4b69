import { describe, expect, it } from 'vitest';
import { markFor } from '#shell/memberMarks';
import { newKeyPair, type KeyPair } from '#shell/seal';

const [a, b, c] = (await Promise.all([newKeyPair(), newKeyPair(), newKeyPair()])) as [
  KeyPair,
  KeyPair,
  KeyPair,
];
const bytes = new TextEncoder().encode('what is marked');
const mark = markFor(a.recipient, b.recipient, a, bytes);

describe('markFor(sender, recipient, own, bytes)', () => {
  it('is the same for who marks and who checks, 32 bytes', () => {
    expect(markFor(a.recipient, b.recipient, b, bytes)).toBe(mark);
    expect(mark).toMatch(/^[\w-]{43}$/);
  });

  it('is another one for other bytes, the other direction and another recipient', () => {
    expect(markFor(a.recipient, b.recipient, a, new TextEncoder().encode('what is market'))).not.toBe(mark);
    expect(markFor(b.recipient, a.recipient, a, bytes)).not.toBe(mark);
    expect(markFor(a.recipient, c.recipient, a, bytes)).not.toBe(mark);
  });

  it('can’t be made without one of the two private keys', () => {
    expect(markFor(a.recipient, b.recipient, { ...a, identity: c.identity }, bytes)).not.toBe(mark);
    expect(markFor(a.recipient, b.recipient, { ...b, identity: c.identity }, bytes)).not.toBe(mark);
  });
});
