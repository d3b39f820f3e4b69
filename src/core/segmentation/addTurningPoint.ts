/**
 * Appends a value to the turning points of a movement; one that continues the direction of the last two, or stays where
 * they are, replaces the last.
 */
export function addTurningPoint(points: number[], value: number): void {
  // Where there are fewer than two, nothing compares with NaN.
  const [before = NaN, last = NaN] = points.slice(-2);
  if ((last - before) * (value - last) >= 0) points.pop();
  points.push(value);
}
