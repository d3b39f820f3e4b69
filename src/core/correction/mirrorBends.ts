import type { BendsView } from '../view/bendsView';

/** What bends showed, as it would have been seen in the picture turned left for right. */
export function mirrorBends({ yawDeg, sdDeg, footDeg: { left, right } }: BendsView): BendsView {
  return {
    yawDeg: -yawDeg,
    sdDeg,
    footDeg: { left: right === null ? null : -right, right: left === null ? null : -left },
  };
}
