import { toRadians } from '../geometry/degrees';
import type { Band } from './errorBand';
import type { YawEstimate } from './fuseCues';
import type { ViewCue } from './viewCue';

/**
 * The band as a multiple of the propagated errors, of a body that is square: split conformal, so that nine of ten
 * errors lie within (docs/view.md).
 */
export type ConformalShares = Record<YawReading, number>;
/** Of the knee angle; also where no truth is known. */
const usualShares: ConformalShares = { firm: 0.91, loose: 1.74 };
/** What tells the yaw firmly. */
const firmCues: readonly ViewCue['name'][] = ['thighs', 'bends', 'free-shank'];
/** So much of the shared errors counts: on rendered recordings, errors follow the joints' part more than theirs. */
const sharedCount = 0.3;
/** How fast the band widens as the body turns: 1.2 times as wide at 20 degrees. */
const turnedCount = 2;
/** No more of the band than this is a repetition's own. */
const mostOwn = 0.8;

/** Firm = thighs, bends or the free shank tell the yaw; loose = only feet do, or nothing. */
export const yawReadings = ['firm', 'loose'] as const;
export type YawReading = (typeof yawReadings)[number];

export function yawReading(cues: readonly { name: ViewCue['name'] }[]): YawReading {
  return cues.some(({ name }) => firmCues.includes(name)) ? 'firm' : 'loose';
}

/**
 * The band of a leg's quantity where two networks saw it: narrower than the propagated one, and more so the firmer the
 * yaw is known and the less the body is turned.
 *
 * @param shares  of the quantity, as fitted to errors of it
 * Source:  split conformal prediction (Vovk et al. 2005; Lei et al. 2018, doi 10.1080/01621459.2017.1307116)
 */
export function closerBand(
  propagated: Band,
  { yawDeg, cues }: Pick<YawEstimate, 'yawDeg' | 'cues'>,
  shares = usualShares,
): Band {
  const { whole, own } = propagated;
  const shared = Math.sqrt(Math.max(0, whole * whole - own * own));
  const turned = Math.hypot(1, turnedCount * Math.sin(toRadians(yawDeg)));
  const closer = shares[yawReading(cues)] * turned * Math.hypot(own, sharedCount * shared);
  return { whole: closer, own: Math.min(own, mostOwn * closer) };
}
