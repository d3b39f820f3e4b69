const small =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );
const tens = 'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');

/**
 * A count as a word, so that every voice says it in the language of the other lines.
 *
 * @param value  whole, 0 to 999
 */
export function numberWord(value: number): string {
  if (value < 20) return small[value]!;
  if (value < 100) return joined(tens[Math.floor(value / 10) - 2]!, '-', value % 10);
  return joined(`${small[Math.floor(value / 100)]!} hundred`, ' and ', value % 100);
}

function joined(start: string, link: string, rest: number): string {
  return rest === 0 ? start : `${start}${link}${numberWord(rest)}`;
}
