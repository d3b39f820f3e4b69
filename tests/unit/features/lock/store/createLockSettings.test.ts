import { describe, expect, it, vi } from 'vitest';
import type { DeviceLock } from '#device/storage/lock/createDeviceLock';
import { storageProblem } from '#device/storage/storageProblem';
import { createLockSettings } from '#features/lock/store/createLockSettings';
import { createTestDevice } from '../../../../support/openTestRepository';

async function open() {
  let isOn = false;
  const lock: DeviceLock = {
    isOn: () => Promise.resolve(isOn),
    turnOn: vi.fn(() => {
      isOn = true;
      return Promise.resolve();
    }),
    turnOff: vi.fn(() => Promise.reject(storageProblem('wrong-passphrase'))),
    changePassphrase: vi.fn(() => Promise.resolve()),
    problem: null,
    leavesNothing: true,
  };
  const repository = { ...(await createTestDevice().open()), lock };
  const reload = vi.fn();
  const settings = createLockSettings({
    openRepository: () => Promise.resolve({ repository, problem: null }),
    idle: { minutes: () => 15, setMinutes: () => Promise.resolve() },
    reload,
  });
  return { settings, lock, reload, state: () => settings.store.getState() };
}

describe('createLockSettings(world)', () => {
  it('refuses a passphrase that is short, or not repeated exactly', async () => {
    const { settings, lock, reload, state } = await open();
    await settings.look();
    expect(state()).toMatchObject({ isOn: false, undone: null, leavesNothing: true, sentence: null });
    await settings.turnOn({ passphrase: 'short', repeated: 'short' }, false);
    expect(state().sentence).toMatch(/at least 12 characters/);
    await settings.turnOn({ passphrase: 'four words in a row', repeated: 'four words in a raw' }, false);
    expect(state().sentence).toMatch(/not the same/);
    expect(lock.turnOn).not.toHaveBeenCalled();
    expect(reload).not.toHaveBeenCalled();
  });

  it('reloads the page once the lock is turned on', async () => {
    const { settings, lock, reload, state } = await open();
    await settings.turnOn({ passphrase: 'four words in a row', repeated: 'four words in a row' }, true);
    expect(lock.turnOn).toHaveBeenCalledWith('four words in a row', true);
    expect(reload).toHaveBeenCalledOnce();
    expect(state().isOn).toBe(true);
  });

  it('reports what went wrong, and reloads the page once the passphrase is changed', async () => {
    const { settings, reload, state } = await open();
    await settings.turnOff('not the passphrase');
    expect(state()).toMatchObject({
      isWorking: false,
      sentence: expect.stringMatching(/does not open/) as string,
    });
    expect(reload).not.toHaveBeenCalled();
    await settings.change('four words in a row', 'five other words in a row', 'five other words in a row');
    expect(reload).toHaveBeenCalledOnce();
  });
});
