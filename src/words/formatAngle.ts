/**
 * A signed knee angle as words and a number: '14° inward', '3° outward', '0°'.
 *
 * @param deg  degrees, inward positive
 */
export function formatAngle(deg: number): string {
  const whole = Math.round(Math.abs(deg));
  if (whole === 0) return '0°';
  return `${whole}° ${deg > 0 ? 'inward' : 'outward'}`;
}
