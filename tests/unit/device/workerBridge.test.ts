import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { describe, expect, it, vi } from 'vitest';
import { createWorkerBridge } from '#device/workerBridge';

interface Calls {
  double(value: number): number;
}

/** A worker that doubles numbers when it is let to; counts who listens to it and what it was sent. */
class SlowWorker extends EventTarget {
  answers = true;
  terminate = vi.fn();
  sent: string[] = [];
  postMessage({ id, type, argumentList }: { id: string; type: string; argumentList?: { value: number }[] }) {
    this.sent.push(type);
    if (!this.answers || type !== 'APPLY') return;
    const data = { id, type: 'RAW', value: 2 * argumentList![0]!.value };
    queueMicrotask(() => this.dispatchEvent(new MessageEvent('message', { data })));
  }
}

function open() {
  const worker = new SlowWorker();
  const bridge = createWorkerBridge<Calls>(
    worker as unknown as Worker,
    (message) => new Error(`It has stopped: ${message}.`),
  );
  return { worker, bridge, double: (value: number) => bridge.ask((remote) => remote.double(value)) };
}

setFlagsFromString('--expose-gc');
const collectGarbage = runInNewContext('gc') as () => void;

/** What the browser says where a worker throws. */
const stopped = (message: string) => Object.assign(new Event('error'), { message });

describe('createWorkerBridge(worker, explain)', () => {
  it('gives the answers of the worker', async () => {
    const { double } = open();
    expect(await Promise.all([double(4), double(9)])).toEqual([8, 18]);
  });

  it('tells all who wait why there will be no answer, and those who ask later', async () => {
    const { worker, bridge, double } = open();
    worker.answers = false;
    const waiting = [double(1), double(2), bridge.failed];
    worker.dispatchEvent(stopped('out of memory'));
    for (const one of [...waiting, double(3)])
      await expect(one).rejects.toThrow('It has stopped: out of memory.');
    expect(worker.sent).toEqual(['APPLY', 'APPLY']);
  });

  it('counts the first reason alone', async () => {
    const { bridge, double } = open();
    bridge.fail(new Error('It was too slow.'));
    bridge.end(new Error('It was closed.'));
    await expect(double(1)).rejects.toThrow('It was too slow.');
  });

  it('ends the worker once, rejects what waits, and lets go of it', async () => {
    const { worker, bridge, double } = open();
    worker.answers = false;
    const waiting = double(1);
    bridge.end(new Error('It was closed.'));
    bridge.end();
    await expect(waiting).rejects.toThrow('It was closed.');
    await expect(double(2)).rejects.toThrow('It was closed.');
    expect(worker.terminate).toHaveBeenCalledTimes(1);
    expect(worker.sent).toEqual(['APPLY', 'RELEASE']);
  });

  it('keeps no answer that was given, however long the worker lives', async () => {
    const { bridge } = open();
    const held = await (async () => {
      const answer = await bridge.ask(() => Promise.resolve({ row: new Float32Array(99) }));
      return new WeakRef(answer);
    })();
    await new Promise((resolve) => setTimeout(resolve)); // What was just made is held until the task is over.
    collectGarbage();
    expect(held.deref()).toBeUndefined();
    bridge.end();
  });
});
