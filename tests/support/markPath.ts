/** How long the marked video runs, s. */
export const markedForS = 4.8;

/**
 * Where the mark of a marked video is: twice up and down on its way from the left to the right.
 *
 * @param atS  from the first frame, s
 * @returns  its centre, shares of the upright picture's width and height
 */
export function markPath(atS: number): { x: number; y: number } {
  const share = atS / markedForS;
  return { x: 0.2 + 0.6 * share, y: 0.5 - 0.3 * Math.sin(4 * Math.PI * share) };
}
