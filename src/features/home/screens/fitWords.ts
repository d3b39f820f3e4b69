/** Widths of the bold letters, in shares of the type size, a little more than they are. */
const widths: readonly [letters: RegExp, em: number][] = [
  [/[ijlI'.,:!|]/, 0.32],
  [/[frt ]/, 0.42],
  [/[mwMW]/, 0.94],
  [/[A-Z]/, 0.7],
  [/./, 0.62],
];

/** Width of a text in bold letters, in shares of the type size; good enough to fit words to a screen. */
export function wordsWidthEm(text: string): number {
  return [...text].reduce((sum, letter) => sum + widths.find(([letters]) => letters.test(letter))![1], 0);
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
