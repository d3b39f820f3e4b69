import { describe, expect, it } from 'vitest';
import { passphraseFault, weakPassphrase } from '#shell/passphrase';

describe('weakPassphrase(passphrase)', () => {
  it.each([
    ['short', /at least 12 characters/],
    ['aaaaaaaaaaaa', /repeats itself/],
    ['iloveyouiloveyou', /repeats itself/],
    ['123456789012', /most used passwords/],
    ['Password2024!', /most used passwords/],
    ['overfoot overfoot', /easy to guess/],
    ['physiotherapy1', /easy to guess/],
  ])('refuses %s with a reason', async (passphrase, reason) => {
    expect(await weakPassphrase(passphrase)).toMatch(reason);
  });

  it.each(['otter river stone lamp', 'lamp stone river fox', 'kP7#vq-2Lm_0xT'])(
    'takes %s',
    async (passphrase) => {
      expect(await weakPassphrase(passphrase)).toBeNull();
    },
  );
});

describe('passphraseFault(passphrase, repeated)', () => {
  it('wants the same twice', async () => {
    expect(await passphraseFault('otter river stone lamp', 'otter river stone')).toMatch(/not the same/);
    expect(await passphraseFault('otter river stone lamp', 'otter river stone lamp')).toBeNull();
  });
});
