import { readFileSync } from 'node:fs';
import type { Browser, CDPSession, Page } from '@playwright/test';
import type { SoakSample } from './soakGrowth';

export type Reading = Omit<SoakSample, 'minute'>;

interface HeapUsage {
  usedSize: number;
  /** Of array buffers and wasm memories. */
  backingStorageSize: number;
}

/** Reads what a page and its workers hold, through the browser's own inspector. */
export interface Meter {
  read(): Promise<Reading>;
}

/** Counts the addresses made for blobs; runs in the page before anything of the program does. */
export function countObjectUrls(): void {
  const live = new Set<string>();
  const { createObjectURL, revokeObjectURL } = URL;
  URL.createObjectURL = (of) => {
    const url = createObjectURL.call(URL, of);
    live.add(url);
    return url;
  };
  URL.revokeObjectURL = (url) => {
    live.delete(url);
    revokeObjectURL.call(URL, url);
  };
  // No function here has a name of its own: the runner would call a helper that the page does not know.
  (window as unknown as { liveObjectUrls: () => number }).liveObjectUrls = () => live.size;
}

/** @param page  opened with countObjectUrls as its first script */
export async function openMeter(browser: Browser, page: Page): Promise<Meter> {
  const inspector = await page.context().newCDPSession(page);
  const browserInspector = await browser.newBrowserCDPSession();
  const workers = await watchWorkers(inspector);
  return {
    async read() {
      await inspector.send('HeapProfiler.collectGarbage');
      const own = (await inspector.send('Runtime.getHeapUsage')) as HeapUsage;
      const others = await workers.usages();
      const all = [own, ...others];
      const { processInfo } = await browserInspector.send('SystemInfo.getProcessInfo');
      const renderers = processInfo
        .filter(({ type }) => type === 'renderer')
        .map(({ id }) => residentBytes(id));
      return {
        heapBytes: sumOf(all.map(({ usedSize }) => usedSize)),
        buffersBytes: sumOf(all.map(({ backingStorageSize }) => backingStorageSize)),
        rendererBytes: renderers.includes(null) ? null : sumOf(renderers.map(Number)),
        workers: page.workers().length,
        // A worker can start or end between the two counts.
        endedWorkers: Math.max(0, (await countWorkerObjects(inspector)) - page.workers().length),
        objectUrls: await page.evaluate(() =>
          (window as unknown as { liveObjectUrls: () => number }).liveObjectUrls(),
        ),
      };
    },
  };
}

/** Objects through which the page speaks to its workers, those of ended workers included. */
async function countWorkerObjects(inspector: CDPSession): Promise<number> {
  const objectGroup = 'soak';
  const { result } = await inspector.send('Runtime.evaluate', {
    expression: 'Worker.prototype',
    objectGroup,
  });
  const { objects } = await inspector.send('Runtime.queryObjects', {
    prototypeObjectId: result.objectId!,
    objectGroup,
  });
  const { result: count } = await inspector.send('Runtime.callFunctionOn', {
    objectId: objects.objectId!,
    functionDeclaration: 'function () { return this.length; }',
    returnByValue: true,
  });
  await inspector.send('Runtime.releaseObjectGroup', { objectGroup });
  return Number(count.value);
}

/** The dedicated workers of a page, each with an inspector of its own that speaks through the page's. */
async function watchWorkers(inspector: CDPSession): Promise<{ usages(): Promise<HeapUsage[]> }> {
  const attached = new Set<string>();
  const waiting = new Map<number, (result: HeapUsage | null) => void>();
  let lastId = 0;
  inspector.on('Target.attachedToTarget', ({ sessionId, targetInfo }) => {
    if (targetInfo.type === 'worker') attached.add(sessionId);
  });
  inspector.on('Target.detachedFromTarget', ({ sessionId }) => attached.delete(sessionId));
  inspector.on('Target.receivedMessageFromTarget', ({ message }) => {
    const { id, result } = JSON.parse(message) as { id?: number; result?: HeapUsage };
    if (id === undefined) return;
    waiting.get(id)?.(result ?? null);
    waiting.delete(id);
  });
  await inspector.send('Target.setAutoAttach', {
    autoAttach: true,
    waitForDebuggerOnStart: false,
    flatten: false,
  });
  /** The worker's answer; null where it ended meanwhile. */
  const ask = async (sessionId: string, method: string): Promise<HeapUsage | null> => {
    const id = ++lastId;
    const answer = new Promise<HeapUsage | null>((resolve) => {
      waiting.set(id, resolve);
      setTimeout(() => resolve(null), 10_000).unref();
    });
    await inspector
      .send('Target.sendMessageToTarget', { sessionId, message: JSON.stringify({ id, method }) })
      .catch(() => waiting.get(id)?.(null));
    return answer;
  };
  return {
    async usages() {
      const usages = await Promise.all(
        [...attached].map(async (sessionId) => {
          await ask(sessionId, 'HeapProfiler.collectGarbage');
          return ask(sessionId, 'Runtime.getHeapUsage');
        }),
      );
      return usages.filter((usage) => usage !== null);
    },
  };
}

/** Null where the system has no /proc. */
function residentBytes(processId: number): number | null {
  try {
    const status = readFileSync(`/proc/${processId}/status`, 'utf8');
    return 1024 * Number(/^VmRSS:\s+(\d+)/m.exec(status)?.[1]);
  } catch {
    return null;
  }
}

function sumOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}
