/** Longest line of a calendar file, without its end, bytes (RFC 5545, 3.1). */
const longestLineBytes = 75;

/** Lines as the text of a calendar file: each folded where it is too long, and ended as RFC 5545, 3.1 asks. */
export function calendarText(lines: readonly string[]): string {
  return lines.map((line) => `${folded(line)}\r\n`).join('');
}

/** Text as the value of a property (RFC 5545, 3.3.11). */
export function escapedText(text: string): string {
  return text.replaceAll(/[\\;,]/g, (sign) => `\\${sign}`).replaceAll(/\r\n|\r|\n/g, '\\n');
}

/** No character is cut in two; a line that continues one begins with a space, which counts. */
function folded(line: string): string {
  let text = '';
  let bytes = 0;
  for (const character of line) {
    const more = utf8Bytes(character);
    if (bytes + more > longestLineBytes) {
      text += '\r\n ';
      bytes = 1;
    }
    text += character;
    bytes += more;
  }
  return text;
}

function utf8Bytes(character: string): number {
  const code = character.codePointAt(0)!;
  if (code < 0x80) return 1;
  if (code < 0x800) return 2;
  return code < 0x10000 ? 3 : 4;
}
