const colours = ['Amber', 'Blue', 'Coral', 'Grey', 'Green', 'Ivory', 'Lilac', 'Olive', 'Red', 'Silver'];
const animals = ['Badger', 'Beaver', 'Finch', 'Hare', 'Heron', 'Lynx', 'Otter', 'Owl', 'Swift', 'Tern'];
/** Two digits, so that two of them are rarely one slip apart. */
const numbers = { from: 10, to: 99 };

/**
 * A pseudonym that nobody has yet.
 *
 * @param random  0 to below 1, evenly spread
 */
export function inventPseudonym(known: readonly string[], random: () => number): string {
  const pick = (from: readonly string[]) => from[Math.floor(random() * from.length)]!;
  const { from, to } = numbers;
  let last = '';
  for (let attempt = 0; attempt < 1000; attempt++) {
    last = `${pick(colours)} ${pick(animals)} ${from + Math.floor(random() * (to - from + 1))}`;
    if (!known.includes(last)) return last;
  }
  // Nine thousand are taken: a longer number makes another.
  for (let number = to + 1; ; number++) {
    const longer = `${last.replace(/\d+$/, '')}${number}`;
    if (!known.includes(longer)) return longer;
  }
}
