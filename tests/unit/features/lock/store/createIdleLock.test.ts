import { describe, expect, it, vi } from 'vitest';
import { createIdleLock } from '#features/lock/store/createIdleLock';

const minuteMs = 60_000;

function open({ isLocked = true, isBusy = false } = {}) {
  const notes = new Map<string, string>();
  let ms = 0;
  const lockNow = vi.fn();
  const busy = { is: isBusy };
  const idle = createIdleLock({
    notes: {
      read: (name) => notes.get(name) ?? null,
      write: (name, text) => Promise.resolve(void notes.set(name, text)),
    },
    isLocked: () => Promise.resolve(isLocked),
    isBusy: () => Promise.resolve(busy.is),
    lockNow,
    nowMs: () => ms,
  });
  return { idle, notes, lockNow, busy, wait: (minutes: number) => (ms += minutes * minuteMs) };
}

describe('createIdleLock(world)', () => {
  it('locks after fifteen minutes without a touch, not before', async () => {
    const { idle, lockNow, wait } = open();
    wait(14.9);
    await idle.look();
    idle.touch();
    wait(14.9);
    await idle.look();
    expect(lockNow).not.toHaveBeenCalled();
    wait(0.1);
    await idle.look();
    expect(lockNow).toHaveBeenCalledOnce();
  });

  it('takes another time, and never', async () => {
    const { idle, lockNow, wait } = open();
    await idle.setMinutes(5);
    wait(5);
    await idle.look();
    expect(lockNow).toHaveBeenCalledOnce();
    await idle.setMinutes(0);
    wait(600);
    await idle.look();
    expect(lockNow).toHaveBeenCalledOnce();
    expect(idle.minutes()).toBe(0);
  });

  it('does not take a kept time that cannot be chosen', () => {
    const { idle, notes } = open();
    notes.set('idle-lock', '100000');
    expect(idle.minutes()).toBe(15);
  });

  it('leaves a device without a lock alone, and waits for unsaved work', async () => {
    const plain = open({ isLocked: false });
    plain.wait(60);
    await plain.idle.look();
    expect(plain.lockNow).not.toHaveBeenCalled();
    const { idle, lockNow, busy, wait } = open({ isBusy: true });
    wait(60);
    await idle.look();
    expect(lockNow).not.toHaveBeenCalled();
    busy.is = false;
    await idle.look();
    expect(lockNow).toHaveBeenCalledOnce();
  });
});
