import { inflateSync } from 'node:zlib';

/** Something printed, in points from the upper left corner of its page. */
export interface PrintMark {
  kind: 'text' | 'drawing';
  /** Empty for a drawing. */
  text: string;
  page: number;
  left: number;
  right: number;
  top: number;
  bottom: number;
}

export interface Print {
  pages: { widthPt: number; heightPt: number }[];
  /** In the order in which they are painted. */
  marks: PrintMark[];
}

type Matrix = readonly [number, number, number, number, number, number];
interface Font {
  /** Of each glyph, thousandths of the size. */
  widths: Map<number, number>;
  letters: Map<number, string>;
}

/** Drawings are written in body heights and enlarged; all else on a page is written in pixels. */
const leastDrawingScale = 10;
/** How far letters reach above and below their line, in sizes of the type. */
const [ascent, descent] = [0.7, 0.2];

/**
 * Reads what the browser printed: each line of text, and each drawing as the box around its lines. For the PDFs that
 * Chromium writes, not for any: whole numbered objects, pages deflated, fonts by glyph with a table of letters.
 */
export function readPrint(pdf: Buffer): Print {
  const objects = readObjects(pdf);
  const pageObjects = [...objects.values()].filter(({ head }) => head.includes('/Type /Page\n'));
  const print: Print = { pages: [], marks: [] };
  for (const [page, { head }] of pageObjects.entries()) {
    const [, , widthPt = 0, heightPt = 0] = numbersIn(/\/MediaBox \[([^\]]*)\]/.exec(head)![1]!);
    const fonts = new Map<string, Font>();
    for (const [, name, number] of head.matchAll(/\/(F\d+) (\d+) 0 R/g))
      fonts.set(name!, readFont(objects, Number(number)));
    const content = objects.get(Number(/\/Contents (\d+) 0 R/.exec(head)![1]))!.content;
    const marks = readMarks(content, fonts, heightPt).map((mark) => ({ ...mark, page }));
    print.pages.push({ widthPt, heightPt });
    // What runs over the end of a page is painted again on the next one.
    print.marks.push(...marks.filter(({ top, bottom }) => bottom > 0 && top < heightPt));
  }
  return print;
}

function readObjects(pdf: Buffer): Map<number, { head: string; content: string }> {
  const objects = new Map<number, { head: string; content: string }>();
  const text = pdf.toString('latin1');
  for (const match of text.matchAll(/(?:^|\n)(\d+) 0 obj\n([\s\S]*?)(stream\n|endobj)/g)) {
    const [whole, number, head = '', end] = match;
    const from = match.index + whole.length;
    const length = Number(/\/Length (\d+)/.exec(head)?.[1]);
    const isPacked = end === 'stream\n' && head.includes('/FlateDecode');
    const content = isPacked ? inflateSync(pdf.subarray(from, from + length)).toString('latin1') : '';
    objects.set(Number(number), { head, content });
  }
  return objects;
}

function readFont(objects: Map<number, { head: string; content: string }>, number: number): Font {
  const refer = (head: string, name: string) =>
    objects.get(Number(new RegExp(`/${name} \\[?(\\d+) 0 R`).exec(head)![1]))!;
  const { head } = objects.get(number)!;
  // A glyph that is drawn with the page (Type 3) has no descendant font, and is taken to have no width.
  const isDrawn = head.includes('/Subtype /Type3');
  const widths = new Map<number, number>();
  const widthList = isDrawn ? '' : /\/W \[([\s\S]*)\]\s/.exec(refer(head, 'DescendantFonts').head)![1]!;
  for (const [, first, list] of widthList.matchAll(/(\d+) \[([^\]]*)\]/g))
    for (const [i, width] of numbersIn(list!).entries()) widths.set(Number(first) + i, width);
  const letters = new Map<number, string>();
  for (const [block, kind] of refer(head, 'ToUnicode').content.matchAll(/beginbf(char|range)[^e]*/g)) {
    const codes = [...block.matchAll(/<([0-9A-F]+)>/g)].map(([, code]) => parseInt(code!, 16));
    const size = kind === 'char' ? 2 : 3;
    for (let i = 0; i + size <= codes.length; i += size) {
      const [first, last, letter] =
        size === 2 ? [codes[i]!, codes[i]!, codes[i + 1]!] : codes.slice(i, i + 3);
      for (let code = first!; code <= last!; code++)
        letters.set(code, String.fromCodePoint(letter! + code - first!));
    }
  }
  return { widths, letters };
}

function readMarks(content: string, fonts: Map<string, Font>, heightPt: number): Omit<PrintMark, 'page'>[] {
  const marks: Omit<PrintMark, 'page'>[] = [];
  const stack: { matrix: Matrix; isDrawing: boolean }[] = [];
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  let isDrawing = false;
  let path: [number, number][] = [];
  let font: Font | undefined;
  let size = 0;
  let line: [number, number] = [0, 0];
  /** The mark that is being gathered: one text, or all lines of one drawing. */
  let text = '';
  let places: [number, number][] = [];

  const gather = (points: readonly [number, number][]) => {
    for (const [x, y] of points)
      places.push([
        matrix[0] * x + matrix[2] * y + matrix[4],
        heightPt - (matrix[1] * x + matrix[3] * y + matrix[5]),
      ]);
  };
  const finish = (kind: PrintMark['kind']) => {
    const [xs, ys] = [places.map(([x]) => x), places.map(([, y]) => y)];
    if (places.length > 0)
      marks.push({
        kind,
        text,
        left: Math.min(...xs),
        right: Math.max(...xs),
        top: Math.min(...ys),
        bottom: Math.max(...ys),
      });
    text = '';
    places = [];
  };
  const write = (glyphs: string) => {
    for (const [code] of glyphs.matchAll(/..../g)) {
      const glyph = parseInt(code, 16);
      const width = ((font?.widths.get(glyph) ?? 0) / 1000) * size;
      const [x, y] = line;
      text += font?.letters.get(glyph) ?? '?';
      gather([
        [x, y - ascent * size],
        [x + width, y + descent * size],
      ]);
    }
  };

  const operands: string[] = [];
  for (const [token] of content.matchAll(/<[0-9A-F]*>|\/?[^\s<>]+/g)) {
    if (/^[-.\d/<]/.test(token)) {
      operands.push(token);
      continue;
    }
    const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = operands.map(Number);
    switch (token) {
      case 'q':
        stack.push({ matrix, isDrawing });
        break;
      case 'Q': {
        const outer = stack.pop()!;
        if (isDrawing && !outer.isDrawing) finish('drawing');
        ({ matrix, isDrawing } = outer);
        break;
      }
      case 'cm':
        matrix = multiply([a, b, c, d, e, f], matrix);
        isDrawing = Math.abs(matrix[0]) > leastDrawingScale;
        break;
      case 'm':
      case 'l':
        path.push([a, b]);
        break;
      case 'c':
        path.push([e, f]);
        break;
      case 're':
        path.push([a, b], [a + c, b + d]);
        break;
      case 'S':
      case 'f':
        if (isDrawing) gather(path);
        path = [];
        break;
      case 'n': // Clips only.
        path = [];
        break;
      case 'Tf':
        font = fonts.get(operands[0]!.slice(1));
        size = b;
        break;
      case 'Tm': // Upright, on pages written downwards: 1 0 0 -1.
        line = [e, f];
        break;
      case 'Td':
        line = [line[0] + a, line[1] - b];
        break;
      case 'Tj':
        write(operands[0]!.slice(1, -1));
        break;
      case 'ET':
        finish('text');
        break;
    }
    operands.length = 0;
  }
  return marks;
}

/** Converts from the inner coordinates to the outer ones. */
function multiply(inner: Matrix, outer: Matrix): Matrix {
  const [a, b, c, d, e, f] = inner;
  const [A, B, C, D, E, F] = outer;
  return [a * A + b * C, a * B + b * D, c * A + d * C, c * B + d * D, e * A + f * C + E, e * B + f * D + F];
}

function numbersIn(text: string): number[] {
  return text.trim().split(/\s+/).map(Number);
}
