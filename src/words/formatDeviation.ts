/**
 * How far the knee stands off the line from hip to ankle: '4 % inward', of leg length.
 *
 * @param share  share of leg length, inward positive
 */
export function formatDeviation(share: number): string {
  const percent = Math.round(Math.abs(share) * 100);
  if (percent === 0) return '0 %';
  return `${percent} % ${share > 0 ? 'inward' : 'outward'}`;
}
