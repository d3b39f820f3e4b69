import { describe, expect, it } from 'vitest';
import { fakeAdapters } from '../../../support/fakeAdapters';

describe('prepare()', () => {
  it('starts the tracker once and reports where it runs', async () => {
    const { tracking, world } = fakeAdapters();
    await Promise.all([tracking.prepare(), tracking.prepare()]);
    expect(world).toMatchObject({ trackersStarted: 1, modelsLoaded: ['full'] });
    expect(tracking.store.getState().device.state).toBe('ready');
  });

  it('reports a failure without throwing', async () => {
    const { tracking, world } = fakeAdapters();
    world.beforeLoad = () => Promise.reject(new Error('no graphics'));
    await tracking.prepare();
    expect(tracking.store.getState().device).toEqual({ state: 'failed', sentence: 'no graphics' });
  });
});
