import { csvParseRows } from 'd3-dsv';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { csvText } from '#documents/csv/csvText';

/** The second line of a table with one row, without line end. */
const rowOf = (...cells: Parameters<typeof csvText>[1] extends Iterable<infer Row> ? Row : never) =>
  csvText(
    cells.map((_, i) => `c${i}`),
    [cells],
  ).split('\r\n')[1];

describe('csvText(names, rows)', () => {
  it('begins with a byte order mark and the names, and ends every row with CRLF', () => {
    expect(
      csvText(
        ['a', 'b_deg'],
        [
          [1, 'x'],
          [null, ''],
        ],
      ),
    ).toBe('\ufeffa,b_deg\r\n1,x\r\n,\r\n');
    expect(csvText(['a'], [])).toBe('\ufeffa\r\n');
  });

  it('writes numbers with a decimal point and as numbers, negative ones too', () => {
    expect(rowOf(1234567.25, -3.5, 0, 1e21)).toBe('1234567.25,-3.5,0,1e+21');
  });

  it('quotes commas, quotation marks and line ends as RFC 4180 (section 2, rules 6 and 7) does', () => {
    expect(csvText(['a', 'b', 'c'], [['one, two', 'a "b" c', 'x\r\ny']])).toBe(
      '\ufeffa,b,c\r\n"one, two","a ""b"" c","x\r\ny"\r\n',
    );
  });

  // OWASP, 'CSV Injection' (from memory): = + - @, tab, carriage return and line feed at a cell's beginning, the wide
  // forms of the signs too; an apostrophe goes before; separators and quotes within the text may begin a cell as well.
  it.each([
    ['=1+2', "'=1+2"],
    ['+1', "'+1"],
    ['-1', "'-1"],
    ['@SUM(1)', "'@SUM(1)"],
    ['\t=1', "'\t'=1"],
    ['\r=1', '"\'\r\'=1"'],
    ['\n=1', '"\'\n\'=1"'],
    ['\uff1d1', "'\uff1d1"],
    ['  =1', "  '=1"],
    ['"=1', '"""\'=1"'],
    ['x;=1', "x;'=1"],
    ['x,=1', '"x,\'=1"'],
    ['x";"=1', '"x"";""\'=1"'],
    ['first\r\n-second', '"first\r\n\'-second"'],
  ])('keeps %j from being run as a formula', (text, cell) => {
    expect(csvText(['a'], [[text]])).toBe(`\ufeffa\r\n${cell}\r\n`);
  });

  it.each(['1 + 2 = 3', 'a-b@c', "it's", 'first\r\nsecond', 'a; b'])('leaves %j alone', (text) => {
    expect(csvParseRows(csvText(['a'], [[text]]).slice(1))[1]).toEqual([text]);
  });

  it('guards whatever a cell begins with, in any separator, and comes back as it was but for apostrophes', () => {
    const hostile = fc
      .array(fc.constantFrom(...'=+-@\t\r\n,;"\' ab1'), { maxLength: 12 })
      .map((c) => c.join(''));
    fc.assert(
      fc.property(fc.array(hostile, { minLength: 2, maxLength: 4 }), (cells) => {
        const text = csvText(
          cells.map((_, i) => `c${i}`),
          [cells],
        ).slice(1);
        const [, read] = csvParseRows(text);
        const bare = (cell: string) => cell.replaceAll("'", '');
        expect(read!.map(bare)).toEqual(cells.map(bare));
        for (const separator of [',', ';', '\t']) {
          for (const piece of text.split(/[\r\n]/).flatMap((line) => line.split(separator)))
            expect(piece.replace(/^[ "]+/, '')).not.toMatch(/^[=+\-@]/);
        }
      }),
    );
  });

  it('refuses what is not a number, and rows of another length', () => {
    expect(() => csvText(['a'], [[Number.NaN]])).toThrow(/can't hold NaN/);
    expect(() => csvText(['a'], [[Infinity]])).toThrow(/can't hold Infinity/);
    expect(() => csvText(['a'], [[1, 2]])).toThrow(/2 of 1 cells/);
  });
});
