import { describe, expect, it, vi } from 'vitest';
import { awakeSentence, keepAwake, type AwakeState } from '#device/camera/keepAwake';
import { watchPage, type SeenPage } from '#device/camera/watchPage';

function fakePage() {
  const listeners = new Set<() => void>();
  const page = {
    visibilityState: 'visible' as DocumentVisibilityState,
    addEventListener: (_: string, listener: () => void) => listeners.add(listener),
    removeEventListener: (_: string, listener: () => void) => listeners.delete(listener),
  };
  return {
    page: page as unknown as SeenPage,
    listeners,
    turn(visibilityState: DocumentVisibilityState) {
      page.visibilityState = visibilityState;
      listeners.forEach((listener) => listener());
    },
  };
}

/** A wake lock whose sentinels can be taken back as the system does. */
function fakeWakeLock(refuses = false) {
  const sentinels: { release: ReturnType<typeof vi.fn>; takeBack: () => void }[] = [];
  const request = vi.fn(async () => {
    if (refuses) throw new DOMException('low battery', 'NotAllowedError');
    let taken: () => void = () => undefined;
    const sentinel = {
      release: vi.fn(async () => taken()),
      addEventListener: (_: string, listener: () => void) => (taken = listener),
      takeBack: () => taken(),
    };
    sentinels.push(sentinel);
    return sentinel as unknown as WakeLockSentinel;
  });
  return { wakeLock: { request }, sentinels };
}

const settle = () => new Promise<void>((resolve) => setTimeout(resolve));

describe('keepAwake(onState, world)', () => {
  it('keeps the screen on until it is stopped', async () => {
    const states: AwakeState[] = [];
    const { page, listeners } = fakePage();
    const { wakeLock, sentinels } = fakeWakeLock();
    const stop = keepAwake((state) => states.push(state), { page, wakeLock });
    await settle();
    expect(states).toEqual(['asked', 'on']);
    stop();
    expect(sentinels[0]!.release).toHaveBeenCalledTimes(1);
    expect(listeners.size).toBe(0);
    expect(states).toEqual(['asked', 'on']);
  });

  it('asks again when a page that was hidden is back', async () => {
    const states: AwakeState[] = [];
    const { page, turn } = fakePage();
    const { wakeLock, sentinels } = fakeWakeLock();
    keepAwake((state) => states.push(state), { page, wakeLock });
    await settle();
    turn('hidden');
    sentinels[0]!.takeBack();
    turn('visible');
    await settle();
    expect(states).toEqual(['asked', 'on', 'hidden', 'asked', 'on']);
    expect(sentinels).toHaveLength(2);
  });

  it('lets go of what comes through after it was stopped', async () => {
    const { page } = fakePage();
    const { wakeLock, sentinels } = fakeWakeLock();
    keepAwake(() => undefined, { page, wakeLock })();
    await settle();
    expect(sentinels[0]!.release).toHaveBeenCalledTimes(1);
  });

  it.each([
    ['refused', fakeWakeLock(true).wakeLock],
    ['unsupported', undefined],
  ])('says what to do where it is %s', async (state, wakeLock) => {
    const states: AwakeState[] = [];
    keepAwake((told) => states.push(told), { page: fakePage().page, wakeLock });
    await settle();
    expect(states.at(-1)).toBe(state);
    expect(awakeSentence(states.at(-1)!)).toMatch(/Set a longer time/);
  });

  it('has nothing to say where all is well', () => {
    for (const state of ['asked', 'on', 'hidden'] as const) expect(awakeSentence(state)).toBeNull();
  });
});

describe('watchPage(listener, page)', () => {
  it('hears of the page being hidden and coming back, until it is stopped', () => {
    const heard: boolean[] = [];
    const { page, turn } = fakePage();
    const stop = watchPage((isVisible) => heard.push(isVisible), page);
    turn('hidden');
    turn('visible');
    stop();
    turn('hidden');
    expect(heard).toEqual([false, true]);
  });
});
