/** Widths of the letters of Atkinson Hyperlegible, bold, in shares of the type size, rounded up to 0.02. */
const widths: readonly [em: number, letters: string][] = [
  [0.28, "'’j.,:"],
  [0.32, 'ilí!¡ '],
  [0.38, 'frt-'],
  [0.46, 'IÍ1'],
  [0.54, 'cyzsvxL'],
  [0.56, 'aáFJ7'],
  [0.58, 'ehknouéóúüñEÉ9'],
  [0.6, 'bdgp2'],
  [0.64, 'qST35?¿BPZ468'],
  [0.68, 'KRV0CHUÚ'],
  [0.74, 'ADNXYÁÑGw'],
  [0.8, 'OÓQ'],
];
/** Of every other letter. */
const widestEm = 0.9;

/** Width of a text in bold letters, in shares of the type size; good enough to fit words to a screen. */
export function wordsWidthEm(text: string): number {
  const widthOf = (letter: string) => widths.find(([, letters]) => letters.includes(letter))?.[0] ?? widestEm;
  return [...text].reduce((sum, letter) => sum + widthOf(letter), 0);
}

/**
 * Words set in lines so that the type can be as large as it goes.
 *
 * @param aspect  width over height of the place, above 0
 * @returns  the lines, and how wide the widest of them is, in shares of the type size
 */
export function fitWords(text: string, aspect: number): { lines: string[]; widestEm: number } {
  const words = text.split(' ');
  const settings = breaks(words).map((lines) => {
    const widestEm = Math.max(...lines.map(wordsWidthEm));
    // Type size that fits both ways, in heights of the place.
    return { lines, widestEm, size: Math.min(aspect / widestEm, 1 / lines.length) };
  });
  const best = settings.reduce((largest, setting) => (setting.size > largest.size ? setting : largest));
  return { lines: best.lines, widestEm: best.widestEm };
}

/** All ways to break a few words into lines. */
function breaks(words: readonly string[]): string[][] {
  const [first = '', ...rest] = words;
  if (rest.length === 0) return [[first]];
  return breaks(rest).flatMap((lines) => [
    [first, ...lines],
    [`${first} ${lines[0]!}`, ...lines.slice(1)],
  ]);
}
