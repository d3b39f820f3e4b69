import { createQueue } from '#core/createQueue';
import { storageProblem } from '../storageProblem';
import { videoType, type Videos, type VideoWriter } from '../videos';
import { sealBytes, type Cipher } from './cipher';

const ending = '.sealed';
/** A video is sealed in pieces of at most this many bytes, so that it is never all in memory while it is written. */
const pieceBytes = 1_000_000;
const lengthBytes = 4;

/**
 * Videos that can't be seen without the key. A sealed one has its own file extension. Where both exist, one
 * of them is only half written; which one depends on the direction of the work.
 *
 * @param isOpening  whether the lock is being turned off: then the sealed one is complete, otherwise the
 * plain one
 */
export function createSealedVideos(inner: Videos, cipher: Cipher, isOpening = false): Videos {
  const readSealed = async (name: string) => {
    const file = await inner.read(`${name}${ending}`);
    return file === null ? null : openVideo(file, name, cipher);
  };
  const readPlain = (name: string) => inner.read(name);
  return {
    async create(name) {
      await inner.remove(name);
      return sealingWriter(await inner.create(`${name}${ending}`), name, cipher);
    },
    async read(name) {
      const [first, second] = isOpening ? [readSealed, readPlain] : [readPlain, readSealed];
      return (await first(name)) ?? second(name);
    },
    async remove(name) {
      await inner.remove(name);
      await inner.remove(`${name}${ending}`);
    },
    async list() {
      const found = new Map<string, number>();
      for (const { name, bytes } of await inner.list())
        found.set(plainName(name), Math.max(bytes, found.get(plainName(name)) ?? 0));
      return [...found].map(([name, bytes]) => ({ name, bytes }));
    },
  };
}

function plainName(name: string): string {
  return name.endsWith(ending) ? name.slice(0, -ending.length) : name;
}

/** Seals the videos that are still plain, one after another; each is always complete in one form. */
export async function sealVideos(inner: Videos, cipher: Cipher, onDone: () => void): Promise<void> {
  for (const { name } of await inner.list()) {
    if (name.endsWith(ending)) continue;
    const video = await inner.read(name);
    if (video === null) continue;
    const writer = sealingWriter(await inner.create(`${name}${ending}`), name, cipher);
    await writer.write(video);
    await writer.close();
    await inner.remove(name);
    onDone();
  }
}

/** The reverse. */
export async function unsealVideos(inner: Videos, cipher: Cipher, onDone: () => void): Promise<void> {
  for (const { name } of await inner.list()) {
    if (!name.endsWith(ending)) continue;
    const file = await inner.read(name);
    if (file === null) continue;
    const writer = await inner.create(plainName(name));
    await writer.write(await openVideo(file, plainName(name), cipher));
    await writer.close();
    await inner.remove(name);
    onDone();
  }
}

/** Each piece: its length (4 bytes, big-endian), then sealed bytes that open at this place of this video alone. */
function sealingWriter(writer: VideoWriter, name: string, cipher: Cipher): VideoWriter {
  let pieces = 0;
  const jobs = createQueue();
  const write = async (chunk: Blob) => {
    for (let from = 0; from < chunk.size; from += pieceBytes) {
      const bytes = new Uint8Array(await chunk.slice(from, from + pieceBytes).arrayBuffer());
      const sealed = await cipher.seal(bytes, placeOf(name, pieces));
      const length = new Uint8Array(lengthBytes);
      new DataView(length.buffer).setUint32(0, sealed.length);
      await writer.write(new Blob([length, sealed]));
      pieces++;
    }
  };
  return {
    write: (chunk) => jobs.add(() => write(chunk)),
    async close() {
      await jobs.idle();
      await writer.close();
    },
  };
}

/**
 * @returns  a video whose writing was cut off is returned up to its last whole piece
 * @throws StorageProblem  'damaged' where a piece was changed or moved
 */
async function openVideo(file: File, name: string, cipher: Cipher): Promise<File> {
  const pieces: Blob[] = [];
  let from = 0;
  while (from + lengthBytes <= file.size) {
    const length = new DataView(await file.slice(from, from + lengthBytes).arrayBuffer()).getUint32(0);
    const start = from + lengthBytes;
    if (length < sealBytes || length > pieceBytes + sealBytes) throw storageProblem('damaged');
    if (start + length > file.size) break;
    const sealed = new Uint8Array(await file.slice(start, start + length).arrayBuffer());
    try {
      pieces.push(new Blob([await cipher.open(sealed, placeOf(name, pieces.length))]));
    } catch (error) {
      throw storageProblem('damaged', error);
    }
    from = start + length;
  }
  return new File(pieces, name, { type: videoType(name), lastModified: file.lastModified });
}

function placeOf(name: string, piece: number): string {
  return `${name} ${piece}`;
}
