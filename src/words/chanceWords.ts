/** A chance in percent, never called impossible or certain: '83 %', 'below 1 %', 'above 99 %'. */
export function chanceWords(chance: number): string {
  if (chance < 0.01) return 'below 1 %';
  if (chance > 0.99) return 'above 99 %';
  return `${Math.round(100 * chance)} %`;
}
