import { describe, expect, it, vi } from 'vitest';
import { storageProblem } from '#device/storage/storageProblem';
import { createGate } from '#features/lock/store/createGate';

describe('createGate()', () => {
  it('is open until somebody asks, and lets through once the passphrase fits', async () => {
    const gate = createGate();
    expect(gate.store.getState().state).toBe('open');
    const unlock = vi.fn((words: string, onProgress: (done: number, total: number) => void) => {
      if (words !== 'right') return Promise.reject(storageProblem('wrong-passphrase'));
      onProgress(1, 2);
      expect(gate.store.getState()).toMatchObject({ state: 'trying', progress: { done: 1, total: 2 } });
      return Promise.resolve();
    });
    const asked = gate.ask({ isDamaged: false, unlock, eraseAll: () => Promise.resolve() });
    expect(gate.store.getState().state).toBe('asking');
    await gate.unlock('wrong');
    expect(gate.store.getState()).toMatchObject({
      state: 'asking',
      sentence: expect.stringMatching(/does not open/) as string,
    });
    await gate.unlock('right');
    await asked;
    expect(gate.store.getState()).toMatchObject({ state: 'open', progress: null, sentence: null });
    await gate.unlock('right');
    expect(unlock).toHaveBeenCalledTimes(2);
  });

  it('tries one passphrase at a time', async () => {
    const gate = createGate();
    let finish = () => undefined as void;
    const unlock = vi.fn(() => new Promise<void>((resolve) => (finish = resolve)));
    void gate.ask({ isDamaged: false, unlock, eraseAll: () => Promise.resolve() });
    const first = gate.unlock('a');
    await gate.unlock('b');
    finish();
    await first;
    expect(unlock).toHaveBeenCalledOnce();
  });
});
