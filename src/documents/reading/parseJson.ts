/**
 * What the largest document within bounds holds, with room to spare: half an hour at 60 frames a second has 11
 * million numbers, and a repetition every two seconds makes some 80,000 objects and arrays.
 */
export const jsonBounds = { depth: 24, containers: 250_000, values: 16_000_000 } as const;

/** Text that is JSON, and holds more than any document does. */
export class TooMuchJson extends Error {}

/**
 * Parses JSON from elsewhere. It is counted first: a few kilobytes, once unpacked, can otherwise fill the memory.
 *
 * @throws SyntaxError  where it is not JSON
 * @throws TooMuchJson  where it is deeper, or holds more, than any document
 */
export function parseJson(text: string): unknown {
  const { length } = text;
  let depth = 0;
  let containers = 0;
  let values = 0;
  // A chain of comparisons, the most frequent first: it looks at 80 million characters.
  for (let at = 0; at < length; at++) {
    const code = text.charCodeAt(at);
    if (code === comma) {
      if (++values > jsonBounds.values) throw new TooMuchJson();
    } else if (code === quote) {
      at = endOfText(text, at);
    } else if (code === openBracket || code === openBrace) {
      if (++containers > jsonBounds.containers || ++depth > jsonBounds.depth) throw new TooMuchJson();
    } else if (code === closeBracket || code === closeBrace) {
      depth--;
    }
  }
  return JSON.parse(text);
}

const quote = 0x22;
const backslash = 0x5c;
const comma = 0x2c;
const openBracket = 0x5b;
const closeBracket = 0x5d;
const openBrace = 0x7b;
const closeBrace = 0x7d;

/** Where a text in quotes ends that begins here. */
function endOfText(text: string, from: number): number {
  let at = text.indexOf('"', from + 1);
  while (at >= 0 && isEscaped(text, at)) at = text.indexOf('"', at + 1);
  return at < 0 ? text.length : at;
}

/** Whether an odd number of backslashes stands before a place. */
function isEscaped(text: string, at: number): boolean {
  let first = at;
  while (text.charCodeAt(first - 1) === backslash) first--;
  return (at - first) % 2 === 1;
}
