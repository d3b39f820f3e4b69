import { csvFormatRow } from 'd3-dsv';

/** A cell: a finite number, text, or null for 'there is none', which stays empty. */
export type Cell = number | string | null;

/** Tells spreadsheet programs that the bytes are UTF-8; without it they guess. */
const byteOrderMark = '\ufeff';

/**
 * Where text could become a formula: before = + - @ (wide forms too) at the beginning of a cell, as any of the usual
 * separators makes one, with or without spaces and quotes between; and before a tab or a line end that begins the text.
 */
const formulaStart =
  /^(?=[\t\r\n])|(?=[=+\-@\uff1d\uff0b\uff0d\uff20])(?<=(?:^|[,;\t\r\n])(?:[^\S\t\r\n]|["'])*)/g;

/**
 * A table as CSV: RFC 4180 with a row of names first, CRLF after every row, a comma between cells and a decimal point,
 * in UTF-8 with a byte order mark.
 *
 * Numbers stay numbers. In text, an apostrophe keeps a spreadsheet program from running what looks like a formula.
 *
 * @throws RangeError  where a number is not finite, or a row has more or fewer cells than there are names
 */
export function csvText(names: readonly string[], rows: Iterable<readonly Cell[]>): string {
  const lines = [csvFormatRow(names.map(guardFormula))];
  for (const row of rows) {
    if (row.length !== names.length)
      throw new RangeError(`A row has ${row.length} of ${names.length} cells.`);
    lines.push(csvFormatRow(row.map(cellText)));
  }
  return `${byteOrderMark}${lines.join('\r\n')}\r\n`;
}

function cellText(cell: Cell): string {
  if (cell === null) return '';
  if (typeof cell === 'string') return guardFormula(cell);
  if (!Number.isFinite(cell)) throw new RangeError(`A cell can't hold ${cell}.`);
  return `${cell}`;
}

/** Text with an apostrophe before everything in it that a spreadsheet program could take for a formula. */
function guardFormula(text: string): string {
  return text.replace(formulaStart, "'");
}
