import { createQueue } from '#core/createQueue';
import { storageProblem } from '../storageProblem';
import { videoType, type Videos, type VideoWriter } from '../videos';
import { sealBytes, type Cipher } from './cipher';

const ending = '.sealed';
/** Name of the file in which a video lies sealed. */
export const sealedName = (name: string) => `${name}${ending}`;
/** A video is sealed in pieces of at most this many bytes, so that it is never all in memory while it is written. */
const pieceBytes = 1_000_000;
const lengthBytes = 4;

/** Whether plain videos are read next to sealed ones, as earlier versions left them, and which of two is whole. */
export type PlainVideos = 'none' | 'first' | 'second';

/**
 * Videos that can't be seen without the key. A sealed one has its own file extension. One that is not sealed
 * is not there.
 */
export function createSealedVideos(inner: Videos, cipher: Cipher, plain: PlainVideos = 'none'): Videos {
  const readSealed = async (name: string) => {
    const file = await inner.read(sealedName(name));
    return file === null ? null : openVideo(file, name, cipher);
  };
  const readPlain = (name: string) => (plain === 'none' ? Promise.resolve(null) : inner.read(name));
  return {
    create: async (name) => sealingWriter(await inner.create(sealedName(name)), name, cipher),
    async read(name) {
      const [first, second] = plain === 'first' ? [readPlain, readSealed] : [readSealed, readPlain];
      return (await first(name)) ?? second(name);
    },
    async remove(name) {
      await inner.remove(name);
      await inner.remove(sealedName(name));
    },
    async list() {
      const found = new Map<string, number>();
      for (const { name, bytes } of await inner.list()) {
        if (plain === 'none' && !name.endsWith(ending)) continue;
        const shown = name.endsWith(ending) ? name.slice(0, -ending.length) : name;
        found.set(shown, Math.max(bytes, found.get(shown) ?? 0));
      }
      return [...found].map(([name, bytes]) => ({ name, bytes }));
    },
  };
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
