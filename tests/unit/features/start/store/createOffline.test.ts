import { describe, expect, it, vi } from 'vitest';
import { createOffline, type OfflineWorld } from '#features/start/store/createOffline';

function world(change: Partial<OfflineWorld> = {}) {
  let on!: Parameters<OfflineWorld['keep']>[0];
  const startNewer = vi.fn();
  const offline = createOffline({
    isKept: () => false,
    keep: (given) => (on = given),
    countTabs: () => Promise.resolve(1),
    ...change,
  });
  return { offline, on, startNewer, state: () => offline.store.getState() };
}

describe('createOffline(world)', () => {
  it('is ready once the page is kept, and from the start where it was', () => {
    const { on, state } = world();
    expect(state()).toEqual({ isReady: false, update: 'none' });
    on.ready();
    expect(state().isReady).toBe(true);
    expect(world({ isKept: () => true }).state().isReady).toBe(true);
  });

  it('starts a newer version when asked, and not before', async () => {
    const { offline, on, startNewer, state } = world();
    await offline.startUpdate();
    expect(state().update).toBe('none');
    on.newer(startNewer);
    expect(state().update).toBe('waiting');
    expect(startNewer).not.toHaveBeenCalled();
    await offline.startUpdate();
    expect(startNewer).toHaveBeenCalledOnce();
    expect(state().update).toBe('starting');
  });

  it('waits while another tab is open, where a set may be under way', async () => {
    let tabs = 2;
    const { offline, on, startNewer, state } = world({ countTabs: () => Promise.resolve(tabs) });
    on.newer(startNewer);
    await offline.startUpdate();
    expect(startNewer).not.toHaveBeenCalled();
    expect(state().update).toBe('other-tabs');
    tabs = 1;
    await offline.startUpdate();
    expect(startNewer).toHaveBeenCalledOnce();
  });
});
