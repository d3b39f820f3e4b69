import { createQueue } from '#core/createQueue';
import type { WriterAnswer, WriterRequest } from './writerMessages';

/**
 * Writes one video into an origin-private file. A sync access handle writes in place and `flush` brings each
 * piece to the disk, so what was acknowledged survives the tab; `createWritable` would write to a copy that a
 * killed tab loses.
 */
let handle: FileSystemSyncAccessHandle | undefined;
let bytesWritten = 0;
const jobs = createQueue();

const scope = self as unknown as DedicatedWorkerGlobalScope;

scope.onmessage = ({ data }: MessageEvent<WriterRequest>) => {
  void jobs.add(async () => scope.postMessage(await answer(data)));
};

async function answer(request: WriterRequest): Promise<WriterAnswer> {
  try {
    if ('open' in request) await open(request.open);
    else if ('write' in request) await write(request.write);
    else close();
    return { id: request.id, error: null };
  } catch (error) {
    const { name, message } = error instanceof Error ? error : { name: 'Error', message: String(error) };
    return { id: request.id, error: { name, message } };
  }
}

async function open({ folder, name }: { folder: string; name: string }): Promise<void> {
  const root = await navigator.storage.getDirectory();
  const directory = await root.getDirectoryHandle(folder, { create: true });
  const file = await directory.getFileHandle(name, { create: true });
  handle = await file.createSyncAccessHandle();
  handle.truncate(0);
  handle.flush();
}

async function write(chunk: Blob): Promise<void> {
  if (handle === undefined) throw new Error('the video is not open');
  const bytes = new Uint8Array(await chunk.arrayBuffer());
  let done = 0;
  try {
    while (done < bytes.length) {
      const rest = bytes.subarray(done);
      const wrote = handle.write(rest, { at: bytesWritten + done });
      // A full device writes less than asked without an error; Chromium's private windows even report more than
      // asked.
      if (!(wrote > 0 && wrote <= rest.length)) {
        throw new DOMException('nothing more could be written', 'QuotaExceededError');
      }
      done += wrote;
    }
    handle.flush();
  } catch (error) {
    // Half a piece would corrupt the next one.
    handle.truncate(bytesWritten);
    throw error;
  }
  bytesWritten += done;
}

function close(): void {
  handle?.close();
  handle = undefined;
}
