import { createCanvas, loadImage } from 'canvas';

/** Of level L, by version from 1 (ISO/IEC 18004, table 9): correcting bytes of a block, and blocks. */
const correctingBytes = [
  ...[7, 10, 15, 20, 26, 18, 20, 24, 30, 18, 20, 24, 26, 30, 22, 24, 28, 30, 28, 28],
  ...[28, 28, 30, 30, 26, 28, 30, 30, 30, 30, 30, 30, 30, 30, 30, 30, 30, 30, 30, 30],
];
const blockCounts = [
  ...[1, 1, 1, 1, 1, 2, 2, 2, 2, 4, 4, 4, 4, 4, 6, 6, 6, 6, 7, 8],
  ...[8, 9, 9, 10, 12, 12, 12, 13, 14, 15, 16, 17, 18, 19, 19, 20, 21, 22, 24, 25],
];
/** Format information is written with these bits turned over. */
const formatMask = 0b101010000010010;
const levelL = 0b01;
const byteMode = 0b0100;
const darkest = 128;

const masks: readonly ((row: number, column: number) => boolean)[] = [
  (i, j) => (i + j) % 2 === 0,
  (i) => i % 2 === 0,
  (_, j) => j % 3 === 0,
  (i, j) => (i + j) % 3 === 0,
  (i, j) => (Math.floor(i / 2) + Math.floor(j / 3)) % 2 === 0,
  (i, j) => ((i * j) % 2) + ((i * j) % 3) === 0,
  (i, j) => (((i * j) % 2) + ((i * j) % 3)) % 2 === 0,
  (i, j) => (((i + j) % 2) + ((i * j) % 3)) % 2 === 0,
];

/**
 * Reads the text out of a picture of a QR code: upright, undamaged, level L, written as bytes. Nothing is corrected, so
 * that one wrong square shows.
 *
 * @param png  with nothing dark but the code
 */
export async function readQrCode(png: Buffer): Promise<string> {
  const isDark = readSquares(await pixelsOf(png));
  const size = isDark.length;
  const version = (size - 17) / 4;
  // Beside the upper left finder, from the left edge and then up.
  const format = [0, 1, 2, 3, 4, 5, 7, 8].map((column) => isDark[8]![column]!);
  const first = format.reduce((bits, dark) => bits * 2 + Number(dark), 0) ^ (formatMask >> 7);
  if (first >> 6 !== levelL) throw new Error('The code is not of level L.');
  const mask = masks[(first >> 3) & 0b111]!;

  const bits: boolean[] = [];
  const isReserved = reservedSquares(size, version);
  let isUpward = true;
  for (let right = size - 1; right > 0; right -= 2) {
    if (right === 6) right = 5; // The timing line takes a column for itself.
    for (let step = 0; step < size; step++) {
      const row = isUpward ? size - 1 - step : step;
      for (const column of [right, right - 1])
        if (!isReserved(row, column)) bits.push(isDark[row]![column]! !== mask(row, column));
    }
    isUpward = !isUpward;
  }
  const bytes = Array.from({ length: Math.floor(bits.length / 8) }, (_, i) =>
    toNumber(bits.slice(8 * i, 8 * i + 8)),
  );
  const data = inOrder(bytes, blockCounts[version - 1]!, correctingBytes[version - 1]!);

  const stream = data.flatMap((byte) => Array.from({ length: 8 }, (_, i) => ((byte >> (7 - i)) & 1) === 1));
  if (toNumber(stream.slice(0, 4)) !== byteMode) throw new Error('The code is not written as bytes.');
  const lengthBits = version < 10 ? 8 : 16;
  const length = toNumber(stream.slice(4, 4 + lengthBits));
  const text = Array.from({ length }, (_, i) => {
    const from = 4 + lengthBits + 8 * i;
    return toNumber(stream.slice(from, from + 8));
  });
  return Buffer.from(text).toString('utf8');
}

const toNumber = (bits: readonly boolean[]) => bits.reduce((value, bit) => value * 2 + Number(bit), 0);

interface Pixels {
  width: number;
  height: number;
  isDark(x: number, y: number): boolean;
}

async function pixelsOf(png: Buffer): Promise<Pixels> {
  const image = await loadImage(png);
  const { width, height } = image;
  const context = createCanvas(width, height).getContext('2d');
  context.drawImage(image, 0, 0);
  const { data } = context.getImageData(0, 0, width, height);
  return { width, height, isDark: (x, y) => data[4 * (y * width + x)]! < darkest };
}

/** The squares between the outermost dark pixels; the upper left finder's edge is seven of them wide. */
function readSquares({ width, height, isDark }: Pixels): boolean[][] {
  const columns = [...Array(width).keys()].filter((x) => [...Array(height).keys()].some((y) => isDark(x, y)));
  const rows = [...Array(height).keys()].filter((y) => columns.some((x) => isDark(x, y)));
  const [left, top] = [columns[0]!, rows[0]!];
  const across = columns.at(-1)! + 1 - left;
  let finder = 0;
  while (isDark(left + finder, top)) finder++;
  const size = 4 * Math.round((across / (finder / 7) - 17) / 4) + 17;
  const square = across / size;
  const middle = (from: number, i: number) => Math.floor(from + (i + 0.5) * square);
  return Array.from({ length: size }, (_, row) =>
    Array.from({ length: size }, (__, column) => isDark(middle(left, column), middle(top, row))),
  );
}

/** Finders with their margins and format, timing lines, alignment patterns, and the version where it is written out. */
function reservedSquares(size: number, version: number): (row: number, column: number) => boolean {
  const alignments = alignmentPlaces(size, version);
  const nearFinder = (row: number, column: number) =>
    (row < 9 && column < 9) || (row < 9 && column >= size - 8) || (row >= size - 8 && column < 9);
  const isFinderCentre = (row: number, column: number) =>
    (row === 6 && column === 6) || (row === 6 && column === size - 7) || (row === size - 7 && column === 6);
  const centres = alignments.flatMap((row) => alignments.map((column) => [row, column] as const));
  const inAlignment = (row: number, column: number) =>
    centres.some(([y, x]) => !isFinderCentre(y, x) && Math.abs(y - row) <= 2 && Math.abs(x - column) <= 2);
  const inVersion = (row: number, column: number) =>
    version >= 7 &&
    ((row < 6 && column >= size - 11 && column < size - 8) ||
      (column < 6 && row >= size - 11 && row < size - 8));
  return (row, column) =>
    row === 6 ||
    column === 6 ||
    nearFinder(row, column) ||
    inAlignment(row, column) ||
    inVersion(row, column);
}

/** Along one edge, as ISO/IEC 18004, annex E, lists them: from the far end in even steps, the first one at 6. */
function alignmentPlaces(size: number, version: number): number[] {
  if (version === 1) return [];
  const count = Math.floor(version / 7) + 2;
  const step = version === 32 ? 26 : 2 * Math.ceil((size - 13) / (2 * count - 2));
  return [6, ...Array.from({ length: count - 1 }, (_, i) => size - 7 - (count - 2 - i) * step)];
}

/** The code holds one byte of each block after another; the last blocks are one byte longer. */
function inOrder(bytes: readonly number[], blocks: number, correcting: number): number[] {
  const shortest = Math.floor(bytes.length / blocks) - correcting;
  const longer = bytes.length % blocks;
  const lengthOf = (block: number) => shortest + (block >= blocks - longer ? 1 : 0);
  const parts: number[][] = Array.from({ length: blocks }, () => []);
  let at = 0;
  for (let i = 0; i <= shortest; i++)
    for (let block = 0; block < blocks; block++) if (i < lengthOf(block)) parts[block]!.push(bytes[at++]!);
  return parts.flat();
}
