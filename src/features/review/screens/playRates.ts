/** As filmed, half speed, quarter speed. */
const rates = [1, 0.5, 0.25];

export function nextRate(rate: number): number {
  return rates[(rates.indexOf(rate) + 1) % rates.length]!;
}

export function rateWords(rate: number): string {
  return { 1: 'As filmed', 0.5: 'Half speed', 0.25: 'Quarter speed' }[rate] ?? `${rate}`;
}

/** As shown on a narrow button. */
export function rateSign(rate: number): string {
  return { 1: '1 ×', 0.5: '½ ×', 0.25: '¼ ×' }[rate] ?? `${rate} ×`;
}
