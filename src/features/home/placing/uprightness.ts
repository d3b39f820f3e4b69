import { mean } from 'd3-array';
import { sides, type Side } from '#core/protocol/side';
import type { ViewedLeg } from '#core/view/measureViewCues';

/** Seen at more than this share of its length the thigh is upright, at less than the other it lies on a seat. */
const uprightShare = 0.85;
const seatedShare = 0.65;

/**
 * How upright a person is, sample by sample, inferred from the apparent thigh length.
 *
 * @returns  1 standing, 0 seated (or bent as low), 0.5 in between or unseen
 */
export function uprightness(legs: Record<Side, ViewedLeg | null>, samples: number): Float64Array {
  const both = sides.map((side) => legs[side]).filter((leg) => leg !== null);
  return Float64Array.from({ length: samples }, (_, i) => {
    const share = mean(
      both.filter(({ picture }) => picture.seen[i] !== 0),
      ({ picture: { hip, knee }, segments }) =>
        Math.hypot(knee.xPx[i]! - hip.xPx[i]!, knee.yPx[i]! - hip.yPx[i]!) / segments.thigh,
    );
    if (share === undefined) return 0.5;
    return share > uprightShare ? 1 : share < seatedShare ? 0 : 0.5;
  });
}
