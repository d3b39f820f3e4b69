import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { defaultLimits } from '#core/protocol/limits';
import { startLiveSet } from '#device/live/startLiveSet';

const frame = { row: null, widthPx: 540, heightPx: 960 };
const options = {
  setup: { task: 'split-stance-sit-to-stand', side: 'right' },
  limits: defaultLimits,
  widthPx: 540,
  heightPx: 960,
  startMs: 0,
} as const;

/** A worker that died without a word. */
class DeadWorker extends EventTarget {
  postMessage() {}
  terminate() {}
}

describe('startLiveSet(setup, onEvent)', () => {
  beforeEach(() => {
    vi.useFakeTimers({ toFake: ['performance'] });
    vi.stubGlobal('Worker', DeadWorker);
  });
  afterEach(() => {
    vi.useRealTimers();
    vi.unstubAllGlobals();
  });

  it('reports a worker that answers nothing any more', async () => {
    const set = startLiveSet(options, () => undefined);
    let hasFailed = false;
    set.failed.catch(() => (hasFailed = true));
    for (let at = 0; at < 9; at++) {
      for (let i = 0; i < 10; i++) set.push({ ...frame, timeMs: at * 1000 + i * 100 });
      vi.advanceTimersByTime(1000);
    }
    await Promise.resolve();
    expect(hasFailed).toBe(false);
    vi.advanceTimersByTime(2000);
    set.push({ ...frame, timeMs: 11_000 });
    await expect(set.failed).rejects.toThrow('does not answer');
  });

  it('waits for the answer after a sleep of the device', async () => {
    const set = startLiveSet(options, () => undefined);
    let hasFailed = false;
    set.failed.catch(() => (hasFailed = true));
    set.push({ ...frame, timeMs: 0 });
    vi.advanceTimersByTime(60_000);
    set.push({ ...frame, timeMs: 60_000 });
    await Promise.resolve();
    await Promise.resolve();
    expect(hasFailed).toBe(false);
  });
});
