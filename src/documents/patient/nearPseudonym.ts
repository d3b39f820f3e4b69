import { plainName } from '../schema/plainName';

/** From this length on, two slips are still near. */
const longFrom = 10;

/**
 * The known pseudonym that a typed one is probably meant to be: the same but for capitals, spaces or marks, or a
 * slip or two away.
 *
 * @returns  null where it is known as it stands, and where none is near
 */
export function nearPseudonym(typed: string, known: readonly string[]): string | null {
  const name = plainName(typed);
  if (name === '' || known.includes(name)) return null;
  const own = bare(name);
  const slips = own.length >= longFrom ? 2 : 1;
  let near: { name: string; slips: number } | null = null;
  for (const other of known) {
    const count = slipsBetween(own, bare(other), slips);
    if (count <= slips && (near === null || count < near.slips)) near = { name: other, slips: count };
  }
  return near?.name ?? null;
}

function bare(name: string): string {
  return name
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]/gu, '');
}

/**
 * Letters to add, leave out or replace, two neighbours swapped counting once (optimal string alignment; Boytsov 2011,
 * ACM J Exp Algorithmics 16, article 1.1); more than `most` where it is more.
 */
function slipsBetween(a: string, b: string, most: number): number {
  if (Math.abs(a.length - b.length) > most) return most + 1;
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let least = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        least = Math.min(least, beforeLast[j - 2]! + 1);
      row.push(least);
    }
    beforeLast = last;
    last = row;
  }
  return last[b.length]!;
}
