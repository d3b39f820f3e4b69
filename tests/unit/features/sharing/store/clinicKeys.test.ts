import { describe, expect, it, vi } from 'vitest';
import { browserClinic } from '#features/sharing/store/browserSending';
import { createClinic } from '#features/sharing/store/createClinic';
import { openNotes } from '#shell/notes';
import { backUpKey, newKeyPair, type KeyPair } from '#shell/seal';
import { createTestDevice } from '../../../../support/openTestRepository';
import { quickScrypt } from '../../../../support/quickScrypt';

describe('keys that are kept and can’t be read', () => {
  async function openClinic(text: string) {
    const repository = await createTestDevice().open();
    await repository.notes.write('keys', text);
    const open = () => Promise.resolve({ repository, problem: null });
    const clinic = createClinic(browserClinic(open, await openNotes(open, null)));
    const sentence = () => clinic.store.getState().sentence;
    return { repository, clinic, sentence };
  }

  it.each(['{"identity":', '[{"identity":7}]', ''])('are told, and not written over (%j)', async (text) => {
    const { repository, clinic, sentence } = await openClinic(text);
    await vi.waitFor(() => expect(sentence()).toMatch(/keys kept on this device can’t be read/));
    await clinic.makeKey();
    expect(sentence()).toMatch(/Restore the key from its backup/);
    expect((await repository.notes.read()).get('keys')).toBe(text);
  });

  it('are set aside where the key is restored from its backup', async () => {
    const pair = await newKeyPair();
    const { repository, clinic, sentence } = await openClinic('{"identity":');
    await clinic.restore(await backUpKey(pair, 'four words in a row', quickScrypt), 'four words in a row');
    expect(sentence()).toBeNull();
    const notes = await repository.notes.read();
    expect(notes.get('keys')).toBe(JSON.stringify([pair]));
    expect(notes.get('keys-damaged')).toBe('{"identity":');
  });
});

describe('createClinic(world)', () => {
  it('uses a key that came from a backup or from another tab', async () => {
    const repository = await createTestDevice().open();
    let keys: KeyPair[] = [];
    const clinic = createClinic({
      openRepository: () => Promise.resolve({ repository, problem: null }),
      firstKeys: keys,
      readKeys: () => Promise.resolve(keys),
      writeKeys: () => Promise.resolve(),
      saveBlob: () => undefined,
      now: () => new Date('2026-05-06T07:08:09Z'),
    });
    expect(clinic.store.getState().recipient).toBeNull();
    await Promise.resolve();
    keys = [await newKeyPair()];
    await repository.notes.write('keys', 'changed');
    await vi.waitFor(() => expect(clinic.store.getState().recipient).toBe(keys[0]!.recipient));
  });
});
