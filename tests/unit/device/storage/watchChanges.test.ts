import { describe, expect, it } from 'vitest';
import { createMemoryRecords } from '#device/storage/memoryRecords';
import { watchChanges, type ChangeChannel, type KeptChange } from '#device/storage/watchChanges';

/** Two tabs' ends of one channel: what one posts, the other hears. */
function fakeChannels(): [ChangeChannel, ChangeChannel] {
  const listeners: ((event: MessageEvent) => void)[] = [];
  const end = (other: number, own: number): ChangeChannel => ({
    postMessage: (data: unknown) => listeners[other]?.({ data } as MessageEvent),
    addEventListener: (_: string, listener: unknown) => {
      listeners[own] = listener as (event: MessageEvent) => void;
    },
  });
  return [end(1, 0), end(0, 1)];
}

function heard(channel: ChangeChannel | null) {
  const watched = watchChanges(createMemoryRecords(), channel);
  const changes: KeptChange[] = [];
  const stop = watched.subscribe((change) => changes.push(change));
  return { ...watched, changes, stop };
}

describe('watchChanges(records, channel)', () => {
  it('reports each kept thing once, after it was changed', async () => {
    const { records, changes } = heard(null);
    await records.apply([
      { put: 'sessions', key: 'a', value: 1 },
      { put: 'facts', key: 'a', value: 1 },
      { put: 'visits', key: 'v', value: 1 },
      { remove: 'rows', key: 'a', andBelow: true },
    ]);
    expect(changes).toEqual([
      { kind: 'recordings', id: 'a' },
      { kind: 'sessions', id: 'v' },
    ]);
  });

  it('reports nothing of what failed, nor of rows that are still being recorded', async () => {
    const { records, changes } = heard(null);
    await expect(records.apply([{ replace: 'facts', key: 'gone', value: 1 }])).rejects.toThrow();
    await records.apply([{ put: 'rows', key: 'a 1', value: 1 }]);
    expect(changes).toEqual([]);
  });

  it('names no id where a whole table is emptied', async () => {
    const { records, changes } = heard(null);
    await records.apply([{ remove: 'notes', key: '', andBelow: true }]);
    expect(changes).toEqual([{ kind: 'notes', id: null }]);
  });

  it('reports that a patient was deleted, to the other tabs too', () => {
    const [own, others] = fakeChannels();
    const here = heard(own);
    const there = heard(others);
    const deleted: KeptChange = { kind: 'patient-deleted', patient: 'Grey Otter 3' };
    here.report([deleted]);
    expect(here.changes).toEqual([deleted]);
    expect(there.changes).toEqual([deleted]);
  });

  it('reports to the other tabs too, and stops when asked', async () => {
    const [own, others] = fakeChannels();
    const here = heard(own);
    const there = heard(others);
    await here.records.apply([{ put: 'plans', key: 'p', value: 1 }]);
    expect(there.changes).toEqual([{ kind: 'plans', id: 'p' }]);
    expect(here.changes).toEqual([{ kind: 'plans', id: 'p' }]);
    there.stop();
    await here.records.apply([{ remove: 'plans', key: 'p' }]);
    expect(there.changes).toHaveLength(1);
  });
});
