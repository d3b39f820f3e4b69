/** Element ids of WebM (Matroska, RFC 9559), as they appear in a file. */
const ids = { header: 0x1a45dfa3, segment: 0x18538067, cluster: 0x1f43b675 };

/** How much is read at once, bytes. */
const windowBytes = 4 * 1024 * 1024;
/** An element's id has up to 4 bytes, its size up to 8. */
const longestHead = 12;

/**
 * The readable part of a WebM file that was cut off in the middle of a picture, for example when the browser
 * that recorded it was killed: everything up to its last whole picture. Recorders write pictures into
 * clusters without a size. A reader of such a file gives up the whole last cluster for one incomplete
 * picture.
 *
 * @returns the same file where nothing is cut off, or where it is not such a recording
 */
export async function wholeWebmPart(file: File): Promise<File> {
  const read = createReader(file);
  const first = await read(0);
  if (first?.id !== ids.header || first.size === null) return file;
  let at = first.headBytes + first.size;
  let isInOpenCluster = false;
  while (at < file.size) {
    const element = await read(at);
    const isOpen = element?.size === null;
    if (element?.id === ids.segment || (element?.id === ids.cluster && isOpen)) {
      isInOpenCluster ||= element.id === ids.cluster;
      at += element.headBytes;
      continue;
    }
    if (!isInOpenCluster && element?.id === ids.cluster) return file; // From another recorder.
    const next = element === null || element.size === null ? Infinity : at + element.headBytes + element.size;
    if (next > file.size) {
      return isInOpenCluster ? new File([file.slice(0, at)], file.name, { type: file.type }) : file;
    }
    at = next;
  }
  return file;
}

interface ElementHead {
  id: number;
  headBytes: number;
  /** Null where the element gives its size as unknown. */
  size: number | null;
}

/** Reads the head of the element at a place, null where there is no complete one; a window of the file at a time. */
function createReader(file: Blob): (at: number) => Promise<ElementHead | null> {
  let from = 0;
  let bytes = new Uint8Array();
  return async (at) => {
    const isInWindow = at >= from && at + longestHead <= from + bytes.length;
    if (!isInWindow) {
      from = at;
      bytes = new Uint8Array(await file.slice(from, from + windowBytes).arrayBuffer());
    }
    return readHead(bytes.subarray(at - from, at - from + longestHead));
  };
}

function readHead(bytes: Uint8Array): ElementHead | null {
  const idBytes = numberLength(bytes[0]);
  const sizeBytes = numberLength(bytes[idBytes]);
  if (idBytes > 4 || sizeBytes > 8 || idBytes + sizeBytes > bytes.length) return null;
  const number = (from: number, count: number, start: number) =>
    bytes.subarray(from, from + count).reduce((sum, byte) => sum * 256 + byte, start);
  const id = number(0, idBytes, 0);
  const mark = 2 ** (8 - sizeBytes);
  const size = number(idBytes + 1, sizeBytes - 1, bytes[idBytes]! % mark);
  const isUnknown =
    bytes[idBytes]! % mark === mark - 1 &&
    bytes.subarray(idBytes + 1, idBytes + sizeBytes).every((byte) => byte === 255);
  return { id, headBytes: idBytes + sizeBytes, size: isUnknown ? null : size };
}

/** How many bytes a number takes, given by the zeros before its first set bit; Infinity where there is none. */
function numberLength(first: number | undefined): number {
  return first === undefined || first === 0 ? Infinity : Math.clz32(first) - 23;
}
