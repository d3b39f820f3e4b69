import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { createRowSaver } from '#device/storage/createRowSaver';
import { unpackRows } from '#device/storage/jointRows';
import { createMemoryRecords } from '#device/storage/memoryRecords';
import { storageProblem, type StorageProblem } from '#device/storage/storageProblem';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

function start(kept = { blocks: 0, lastMs: -1 }) {
  const records = createMemoryRecords();
  const problems: StorageProblem[] = [];
  const keeper = createRowSaver(records, 'set:a', kept, (problem) => problems.push(problem));
  const keptMs = async () =>
    unpackRows((await records.list('rows', 'set:a/')).map(({ value }) => value)).map(({ timeMs }) => timeMs);
  const add = (...timesMs: number[]) => timesMs.forEach((timeMs) => keeper.add({ timeMs, row: null }));
  return { records, keeper, problems, keptMs, add };
}

describe('createRowSaver(records, owner, kept, onProblem)', () => {
  it('keeps rows half a second after the first of them, without being asked', async () => {
    const { add, keptMs } = start();
    add(0, 33, 66);
    await vi.advanceTimersByTimeAsync(499);
    expect(await keptMs()).toEqual([]);
    await vi.advanceTimersByTimeAsync(1);
    expect(await keptMs()).toEqual([0, 33, 66]);
    add(100);
    await vi.advanceTimersByTimeAsync(500);
    expect(await keptMs()).toEqual([0, 33, 66, 100]);
  });

  it('keeps more than nine blocks in their order', async () => {
    const { add, keeper, keptMs } = start();
    for (let timeMs = 0; timeMs < 120; timeMs += 10) {
      add(timeMs);
      await keeper.flush();
    }
    expect(await keptMs()).toEqual([0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100, 110]);
  });

  it('keeps all so far at once when asked', async () => {
    const { add, keeper, keptMs } = start();
    add(0, 33);
    await keeper.flush();
    expect(await keptMs()).toEqual([0, 33]);
  });

  it('leaves out rows whose time does not increase', async () => {
    const { add, keeper, keptMs } = start({ blocks: 4, lastMs: 20 });
    add(20, 21, 21, 5, NaN, 22);
    await keeper.flush();
    expect(await keptMs()).toEqual([21, 22]);
  });

  it('reports rows that could not be saved, and saves them with the next ones', async () => {
    const { add, records, problems, keptMs } = start();
    const refuse = vi.spyOn(records, 'apply').mockRejectedValueOnce(storageProblem('full'));
    add(0, 33);
    await vi.advanceTimersByTimeAsync(500);
    expect(problems.map(({ reason }) => reason)).toEqual(['full']);
    add(66);
    await vi.advanceTimersByTimeAsync(500);
    expect(await keptMs()).toEqual([0, 33, 66]);
    expect(refuse).toHaveBeenCalledTimes(2);
  });

  it('keeps nothing any more once it was stopped', async () => {
    const { add, keeper, keptMs } = start();
    add(0);
    keeper.stop();
    add(33);
    await vi.advanceTimersByTimeAsync(1000);
    await keeper.flush();
    expect(await keptMs()).toEqual([]);
  });
});
