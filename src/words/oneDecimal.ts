/** A number with one decimal at most, and a true minus: 13.2, 8, −0.3. Halves are rounded away from 0. */
export function oneDecimal(value: number): string {
  // Without the last digits, 4.8499999 of a sum would not be the 4.85 that it stands for.
  const tenths = Math.round(Number((10 * Math.abs(value)).toFixed(6)));
  return `${value < 0 && tenths > 0 ? '−' : ''}${tenths / 10}`;
}
