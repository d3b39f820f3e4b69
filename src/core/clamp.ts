/** A value brought between two others; the least where they cross. */
export function clamp(value: number, least: number, most: number): number {
  return Math.max(least, Math.min(most, value));
}
