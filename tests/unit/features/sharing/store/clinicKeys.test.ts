import { describe, expect, it, vi } from 'vitest';
import { createClinic } from '#features/sharing/store/createClinic';
import { newKeyPair, type KeyPair } from '#shell/seal';
import { createTestDevice } from '../../../../support/openTestRepository';

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
    });
    expect(clinic.store.getState().recipient).toBeNull();
    await Promise.resolve();
    keys = [await newKeyPair()];
    await repository.notes.write('keys', 'changed');
    await vi.waitFor(() => expect(clinic.store.getState().recipient).toBe(keys[0]!.recipient));
  });
});
