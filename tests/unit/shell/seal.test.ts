import { describe, expect, it } from 'vitest';
import { planSchema } from '#documents/plan/planDocument';
import {
  backUpKey,
  newKeyPair,
  restoreKey,
  sealByPassphrase,
  sealFor,
  unseal,
  unsealByPassphrase,
} from '#shell/seal';
import { quickScrypt } from '../../support/quickScrypt';

const text = 'Invented content. '.repeat(9000);
const [mine, other] = await Promise.all([newKeyPair(), newKeyPair()]);
const sealed = await sealFor([mine.recipient], new Blob([text]));
const bytes = new Uint8Array(await sealed.arrayBuffer());

describe('sealFor(recipient, blob), unseal(identity, blob)', () => {
  it('give back what was sealed, to the key it was sealed for', async () => {
    expect(await (await unseal(mine.identity, sealed)).text()).toBe(text);
  });

  it('write the open age format, version 1, for an X25519 key', async () => {
    expect(await sealed.slice(0, 60).text()).toMatch(/^age-encryption\.org\/v1\n-> X25519 /);
    expect(planSchema.shape.returnKeys.safeParse([mine.recipient]).success).toBe(true);
  });

  it('open with each of the keys, and with no other', async () => {
    const [second, third] = await Promise.all([newKeyPair(), newKeyPair()]);
    const forBoth = await sealFor([mine.recipient, second.recipient], new Blob([text]));
    expect(await (await unseal(mine.identity, forBoth)).text()).toBe(text);
    expect(await (await unseal(second.identity, forBoth)).text()).toBe(text);
    await expect(unseal(third.identity, forBoth)).rejects.toThrow(/sealed for another key/);
  });

  it('say that another key does not open it', async () => {
    await expect(unseal(other.identity, sealed)).rejects.toThrow(/sealed for another key/);
  });

  it.each([30, 150, 250, 70_000, bytes.length - 1])(
    'say that the seal is broken where byte %i was changed',
    async (at) => {
      const changed = bytes.slice();
      changed[at] = changed[at]! ^ 1;
      await expect(unseal(mine.identity, new Blob([changed]))).rejects.toThrow(
        /^(It is sealed for another key|Its seal is broken)/,
      );
    },
  );

  it.each([0, 10, 100, 66_000, bytes.length - 1])(
    'refuse a file that was cut after %i bytes',
    async (length) => {
      await expect(unseal(mine.identity, new Blob([bytes.slice(0, length)]))).rejects.toThrow(/^It/);
    },
  );
});

describe('backUpKey(pair, passphrase), restoreKey(file, passphrase)', () => {
  it('bring a key to another device, by its passphrase alone', async () => {
    const backup = await backUpKey(mine, 'four words in a row', quickScrypt);
    expect(await backup.text()).not.toContain('AGE-SECRET-KEY');
    expect(await restoreKey(backup, 'four words in a row')).toEqual(mine);
    await expect(restoreKey(backup, 'four other words')).rejects.toThrow(/does not open this file/);
  });

  it('say of other files that they hold no key', async () => {
    await expect(restoreKey(sealed, 'x')).rejects.toThrow(/not a key backup/);
    await expect(restoreKey(new Blob(['x']), 'x')).rejects.toThrow(/not a key backup/);
  });
});

describe('a passphrase that seals', { timeout: 60_000 }, () => {
  const passphrase = 'four words in a row';
  /** The head of an age file says log2 of scrypt's N. */
  const ageDefault = /^age-encryption\.org\/v1\n-> scrypt \S+ 18\n/;

  it('opens the file', async () => {
    const file = await sealByPassphrase(passphrase, new Blob([text]), quickScrypt);
    expect(await (await unsealByPassphrase(passphrase, file)).text()).toBe(text);
  });

  it('costs age’s default work factor to try', async () => {
    const file = await sealByPassphrase(passphrase, new Blob([text]));
    expect(await file.text()).toMatch(ageDefault);
  });

  it('costs as much for the backup of a key', async () => {
    expect(await (await backUpKey(mine, passphrase)).text()).toMatch(ageDefault);
  });
});
