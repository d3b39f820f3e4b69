import { filmBounds } from '#core/keypoints/filmBounds';

/** Boxes of MP4 and MOV files (ISO/IEC 14496-12) in which tables of frames stand. */
const containers = ['moov', 'trak', 'mdia', 'minf', 'stbl', 'moof', 'traf'];
/** Bytes that each entry of a table takes. */
const entryBytes: Record<string, number> = { stts: 8, ctts: 8, stsc: 12, stss: 4, stco: 4, co64: 8 };
/** Tables are read at once up to this size; those of the longest recording take 3 MB. */
const mostTableBytes = 32_000_000;
/** Boxes one after another in a file, of which recorders write a few a second, and in another box. */
const mostBoxes = { inFile: 50_000, inBox: 1000 };
/** How deep tables stand: in moov, trak, mdia, minf, stbl. */
const deepest = 8;

/** 'more-than-it-holds': there is no room for the entries; 'too-many-frames': more than can be measured. */
export type TableFault = 'more-than-it-holds' | 'too-many-frames';

/**
 * What is wrong with the tables of an MP4 or MOV file, which a reader would build in memory as they announce
 * themselves; null where nothing is, and for other files.
 */
export async function tableFault(file: Blob): Promise<TableFault | null> {
  let at = 0;
  for (let boxes = 0; at + 8 <= file.size; boxes++) {
    if (boxes > mostBoxes.inFile) return 'too-many-frames';
    const box = readHead(new DataView(await file.slice(at, at + 16).arrayBuffer()), file.size - at);
    if (box === null) return null; // Not such a file, or cut off: its reader says so.
    if (containers.includes(box.type)) {
      if (box.bytes > mostTableBytes) return 'too-many-frames';
      const content = await file.slice(at + box.headBytes, at + box.bytes).arrayBuffer();
      const fault = faultIn(new DataView(content), true, 1);
      if (fault !== null) return fault;
    }
    at += box.bytes;
  }
  return null;
}

interface BoxHead {
  type: string;
  headBytes: number;
  /** With its head. */
  bytes: number;
}

/** @param roomBytes  from where it starts to the end of what it stands in */
function readHead(view: DataView, roomBytes: number): BoxHead | null {
  if (view.byteLength < 8) return null;
  const short = view.getUint32(0);
  const type = String.fromCharCode(...[4, 5, 6, 7].map((at) => view.getUint8(at)));
  const isLong = short === 1;
  if (isLong && view.byteLength < 16) return null;
  const bytes = isLong ? Number(view.getBigUint64(8)) : short === 0 ? roomBytes : short;
  const headBytes = isLong ? 16 : 8;
  return bytes < headBytes ? null : { type, headBytes, bytes: Math.min(bytes, roomBytes) };
}

interface Box {
  type: string;
  content: DataView;
}

function boxesIn(view: DataView): Box[] {
  const boxes: Box[] = [];
  for (let at = 0; at + 8 <= view.byteLength && boxes.length <= mostBoxes.inBox;) {
    const rest = view.byteLength - at;
    const head = readHead(new DataView(view.buffer, view.byteOffset + at, rest), rest);
    if (head === null) break;
    const { type, headBytes, bytes } = head;
    const content = new DataView(view.buffer, view.byteOffset + at + headBytes, bytes - headBytes);
    boxes.push({ type, content });
    at += bytes;
  }
  return boxes;
}

/** @param isFilm  whether it holds pictures; sound has many more entries, and is not read */
function faultIn(view: DataView, isFilm: boolean, depth: number): TableFault | null {
  const boxes = boxesIn(view);
  if (depth > deepest || boxes.length > mostBoxes.inBox) return 'more-than-it-holds';
  const handler = boxes.find(({ type }) => type === 'hdlr')?.content;
  const isOfFilm = handler === undefined || handler.byteLength < 12 ? isFilm : textAt(handler, 8) === 'vide';
  for (const { type, content } of boxes) {
    const fault = containers.includes(type)
      ? faultIn(content, isOfFilm, depth + 1)
      : faultOf(type, content, isOfFilm);
    if (fault !== null) return fault;
  }
  return null;
}

function faultOf(type: string, table: DataView, isFilm: boolean): TableFault | null {
  const room = table.byteLength;
  const each = entryBytes[type];
  if (each !== undefined && room >= 8) {
    const entries = table.getUint32(4);
    if (entries * each > room - 8) return 'more-than-it-holds';
    const isTimed = type === 'stts' || type === 'ctts';
    return isFilm && isTimed && countOf(table, entries) > filmBounds.frames ? 'too-many-frames' : null;
  }
  if ((type === 'stsz' || type === 'stz2') && room >= 12) {
    const samples = table.getUint32(8);
    const bits = type === 'stz2' ? table.getUint8(7) : table.getUint32(4) === 0 ? 32 : 0;
    if ((samples * bits) / 8 > room - 12) return 'more-than-it-holds';
    return isFilm && samples > filmBounds.frames ? 'too-many-frames' : null;
  }
  // Each of its frames may take no room at all.
  if (type === 'trun' && room >= 8 && table.getUint32(4) > filmBounds.frames) return 'too-many-frames';
  return null;
}

/** Frames that the entries of a table stand for. */
function countOf(table: DataView, entries: number): number {
  let count = 0;
  for (let entry = 0; entry < entries; entry++) count += table.getUint32(8 + 8 * entry);
  return count;
}

function textAt(view: DataView, from: number): string {
  return String.fromCharCode(...[0, 1, 2, 3].map((at) => view.getUint8(from + at)));
}
