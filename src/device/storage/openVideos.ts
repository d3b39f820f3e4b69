import { explainStorage, storageProblem } from './storageProblem';
import { videoType, type Videos, type VideoWriter } from './videos';
import type { WriterAnswer, WriterRequest } from './worker/writerMessages';

/**
 * Videos as files in the browser's private file system, visible to this page only.
 *
 * @param folder  name of their folder
 * @throws StorageProblem  refused, a private window, not supported
 */
export async function openVideos(folder = 'videos'): Promise<Videos> {
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

async function openFolder(folder: string): Promise<FileSystemDirectoryHandle> {
  try {
    const root = await navigator.storage.getDirectory();
    return await root.getDirectoryHandle(folder, { create: true });
  } catch (error) {
    // Where a page may use the database but not these files, it is nearly always a private window.
    throw storageProblem('private-window', error);
  }
}

function isMissing(error: unknown): boolean {
  return error instanceof DOMException && error.name === 'NotFoundError';
}

/** One worker per video: it ends when the video is written, and killing it affects no other video. */
async function createWriter(folder: string, name: string): Promise<VideoWriter> {
  const worker = new Worker(new URL('./worker/videoWriter.ts', import.meta.url), { type: 'module' });
  const waiting = new Map<number, (answer: WriterAnswer) => void>();
  let lastId = 0;
  let failure: WriterAnswer['error'] = null;
  worker.onmessage = ({ data }: MessageEvent<WriterAnswer>) => waiting.get(data.id)?.(data);
  worker.onerror = ({ message }) => {
    failure = { name: 'Error', message: message || 'the part that writes videos could not start' };
    for (const [id, settle] of waiting) settle({ id, error: failure });
  };

  const ask = async (
    request: { open: { folder: string; name: string } } | { write: Blob } | { close: true },
  ) => {
    const id = ++lastId;
    const { error } =
      failure !== null
        ? { error: failure }
        : await new Promise<WriterAnswer>((resolve) => {
            waiting.set(id, resolve);
            worker.postMessage({ id, ...request } satisfies WriterRequest);
          });
    waiting.delete(id);
    if (error !== null) throw explainStorage(Object.assign(new Error(error.message), { name: error.name }));
  };

  try {
    await ask({ open: { folder, name } });
  } catch (error) {
    worker.terminate();
    throw error;
  }
  let closing: Promise<void> | undefined;
  return {
    write: (chunk) =>
      closing === undefined
        ? ask({ write: chunk })
        : Promise.reject(explainStorage(new Error('the video was closed'))),
    close: () => (closing ??= ask({ close: true }).finally(() => worker.terminate())),
  };
}
