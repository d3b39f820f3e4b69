import { medianOf } from '../signal/quantileOf';
import { headingDeg } from './bodyFrame';
import type { Path } from './path';

/**
 * Usual horizontal direction from one point to another.
 *
 * @param when  1 where a sample counts
 * @returns  degrees, 0 = towards the camera, positive = to the picture's right; null where nothing counts
 */
export function medianHeadingDeg(from: Path, to: Path, when: Uint8Array): number | null {
  const headings: number[] = [];
  for (let i = 0; i < when.length; i++) if (when[i] !== 0) headings.push(headingDeg(from, to, i));
  return medianOf(headings) ?? null;
}
