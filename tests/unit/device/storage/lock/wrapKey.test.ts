import { describe, expect, it } from 'vitest';
import { unwrapKey, wrapKey } from '#device/storage/lock/wrapKey';
import { quickScrypt } from '../../../../support/quickScrypt';

const key = Uint8Array.from({ length: 32 }, (_, index) => index);

describe('wrapKey(key, passphrase), unwrapKey(wrapped, passphrase)', { timeout: 60_000 }, () => {
  it('give the key back', async () => {
    const wrapped = await wrapKey(key, 'four words in a row', quickScrypt);
    expect(await unwrapKey(wrapped, 'four words in a row')).toEqual(key);
  });

  it('cost age’s default work factor to try', async () => {
    const wrapped = await wrapKey(key, 'four words in a row');
    expect(new TextDecoder('latin1').decode(wrapped)).toMatch(/^age-encryption\.org\/v1\n-> scrypt \S+ 18\n/);
  });
});
