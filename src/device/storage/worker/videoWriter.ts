import { expose } from 'comlink';
import { createQueue } from '#core/createQueue';
import { openVideoFolder, type VideoFolder } from './videoFolder';
import type { WriterCalls } from './writerCalls';

let handle: FileSystemSyncAccessHandle | undefined;
let isThere: () => Promise<boolean> = () => Promise.resolve(false);
let bytesWritten = 0;
const jobs = createQueue();

/**
 * Writes one video into an origin-private file. A sync access handle writes in place and `flush` brings each
 * piece to the disk, so what was acknowledged survives the tab; `createWritable` would write to a copy that a
 * killed tab loses.
 */
const calls: WriterCalls = {
  open: (folder, name) => jobs.add(() => open(folder, name)),
  write: (chunk) => jobs.add(() => write(chunk)),
  close: () => jobs.add(close),
};

expose(calls);

async function open(folder: VideoFolder, name: string): Promise<void> {
  const directory = await openVideoFolder(folder);
  const file = await directory.getFileHandle(name, { create: true });
  isThere = () =>
    directory.getFileHandle(name).then(
      () => true,
      () => false,
    );
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
    // A file that was removed with all site data reports a full device.
    if (!(await isThere())) throw new DOMException('the video was removed', 'NotFoundError');
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
