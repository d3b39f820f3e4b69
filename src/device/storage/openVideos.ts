import { inTime } from '../inTime';
import { createWorkerBridge } from '../workerBridge';
import { explainStorage, storageProblem } from './storageProblem';
import { videoType, type Videos, type VideoWriter } from './videos';
import { openVideoFolder, videosFolder, type VideoFolder } from './worker/videoFolder';
import type { WriterCalls } from './worker/writerCalls';

/**
 * Videos as files in the browser's private file system, visible to this page only.
 *
 * @throws StorageProblem  refused, a private window, not supported
 */
export async function openVideos(
  folder: VideoFolder = { bucket: null, folder: videosFolder },
): Promise<Videos> {
  // Pages over http have no such files at all.
  if (typeof navigator.storage?.getDirectory !== 'function') throw storageProblem('unsupported');
  const directory = await openFolder(folder);
  return {
    create: (name) => createWriter(folder, name),
    async read(name) {
      try {
        const file = await (await directory.getFileHandle(name)).getFile();
        return new File([file], name, { type: videoType(name), lastModified: file.lastModified });
      } catch (error) {
        if (isMissing(error)) return null;
        throw explainStorage(error);
      }
    },
    async remove(name) {
      try {
        await directory.removeEntry(name);
      } catch (error) {
        if (!isMissing(error)) throw explainStorage(error);
      }
    },
    async list() {
      try {
        const found: { name: string; bytes: number }[] = [];
        for await (const entry of directory.values()) {
          if (entry.kind !== 'file') continue;
          found.push({ name: entry.name, bytes: (await (entry as FileSystemFileHandle).getFile()).size });
        }
        return found;
      } catch (error) {
        throw explainStorage(error);
      }
    },
  };
}

async function openFolder(folder: VideoFolder): Promise<FileSystemDirectoryHandle> {
  try {
    return await openVideoFolder(folder);
  } catch (error) {
    // Where a page may use the database but not these files, it is nearly always a private window.
    throw storageProblem('private-window', error);
  }
}

function isMissing(error: unknown): boolean {
  return error instanceof DOMException && error.name === 'NotFoundError';
}

/** The slowest storage that a recording keeps up with, bytes per ms, and what any request may take, ms. */
const slowest = { bytesPerMs: 1000, requestMs: 10_000 };

/** One worker per video: it ends when the video is written, and killing it affects no other video. */
async function createWriter(folder: VideoFolder, name: string): Promise<VideoWriter> {
  const bridge = createWorkerBridge<WriterCalls>(
    new Worker(new URL('./worker/videoWriter.ts', import.meta.url), { type: 'module' }),
    (message) => new Error(message || 'the part that writes videos could not start'),
  );
  let isSilent = false;
  const answer = async (asked: Promise<void>, bytes = 0) => {
    // What comes after a silence need not wait for it once more.
    const withinMs = isSilent ? 0 : slowest.requestMs + bytes / slowest.bytesPerMs;
    try {
      await inTime(asked, withinMs, () => {
        isSilent = true;
        return new DOMException('the part that writes videos does not answer', 'TimeoutError');
      });
    } catch (error) {
      throw explainStorage(error);
    }
  };

  try {
    await answer(bridge.ask((remote) => remote.open(folder, name)));
  } catch (error) {
    bridge.end();
    throw error;
  }
  let closing: Promise<void> | undefined;
  return {
    write: (chunk) =>
      closing === undefined
        ? answer(
            bridge.ask((remote) => remote.write(chunk)),
            chunk.size,
          )
        : Promise.reject(explainStorage(new Error('the video was closed'))),
    close: () => (closing ??= answer(bridge.ask((remote) => remote.close())).finally(() => bridge.end())),
  };
}
