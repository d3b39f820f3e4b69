import { medianOf } from '../signal/quantileOf';
import { longestShuffle, type FootPath } from './findRepetitions';

/** Marks with 1 the samples in which a foot is about where it usually is; 0 while the person comes or goes. */
export function inPlace(feet: readonly FootPath[], samples: number): Uint8Array {
  const usual = feet.map(({ x, y }) => ({ x: medianOf(x) ?? 0, y: medianOf(y) ?? 0 }));
  return Uint8Array.from({ length: samples }, (_, i) =>
    feet.some(({ x, y }, foot) => {
      const place = usual[foot]!;
      return Math.hypot(x[i]! - place.x, y[i]! - place.y) < longestShuffle;
    })
      ? 1
      : 0,
  );
}
