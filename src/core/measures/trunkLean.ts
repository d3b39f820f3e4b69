import { toDegrees } from '../geometry/degrees';
import { distancePx } from '../geometry/point';
import type { PointPair } from '../measurement/seenBody';
import { middleAt, missingAt } from '../measurement/smoothPoints';
import { cosSin } from '../view/bodyFrame';
import { ninetyPercent } from '../view/errorBand';
import { eitherWay } from './eitherWay';
import { farther } from './farther';
import type { Measure } from './measure';
import { nakagawa } from './nakagawa';
import { noSource } from './noSource';
import { peakColumns } from './peakColumns';
import { degrees } from './units';

/** How far the trunk leans to the side, from own standing, degrees, towards the working side positive. */
export const trunkLean = {
  id: 'trunk-lean',
  name: 'Trunk lean',
  unit: degrees,
  ways: {
    least: { short: 'away', long: 'away from the working side' },
    most: { short: 'towards', long: 'towards the working side' },
  },
  term: {
    term: 'Trunk lean',
    meaning: 'How far the upper body leaned to either side, counted from own standing.',
  },
  series({ hips, shoulders, samples, view, towardsMidline, fromStanding, bandShare }) {
    const { working, yaw, roll } = view;
    const trunkPx = trunkLengthPx(hips, shoulders, samples);
    return {
      curve: fromStanding([...hips, ...shoulders], (i) => {
        const pelvis = middleAt(hips, i);
        const girdle = middleAt(shoulders, i);
        // Away from the middle of the picture, a forward bend is seen partly from the side.
        const { x: right, z: ahead } = working.lifted.hip;
        const seenDeg = yaw.yawDeg + toDegrees(Math.atan2(right[i]!, ahead[i]!));
        return (
          -towardsMidline * leanDeg((girdle.x - pelvis.x) / trunkPx, (pelvis.y - girdle.y) / trunkPx, seenDeg)
        );
      }),
      // A trunk that bends forward by half a right angle turns as much of the yaw's uncertainty into lean.
      band: () => {
        const own = toDegrees(bandShare(trunkPx));
        const shared = ninetyPercent * Math.hypot(yaw.sdDeg * Math.SQRT1_2, roll.sdDeg);
        return { whole: Math.hypot(own, shared), own };
      },
    };
  },
  hasFarBand: false,
  widestBand: null,
  peak: farther,
  heldAgainst: { least: 'min', most: 'max' },
  limits: eitherWay(
    { max: 30, step: 1, first: 10, source: `as far as towards the working side: ${noSource}` },
    {
      source:
        'about one standard deviation above the mean of people without knee pain in a single-leg squat (Nakagawa 2012)',
      healthy: { ...nakagawa, mean: 6.7, sd: 3 },
    },
  ),
  isAlwaysLimited: false,
  hasSavedCurve: false,
  columns: peakColumns('trunk_lean', farther),
} as const satisfies Measure;

/**
 * Sideways lean of the trunk: what its forward lean looks like from a turned view is taken off.
 *
 * @param aside  shoulders to the picture's right of the hips, and `up` above them, share of trunk length
 * @returns  degrees, to the picture's right positive
 */
function leanDeg(aside: number, up: number, yawDeg: number): number {
  const [cos, sin] = cosSin(yawDeg);
  const forward = Math.sqrt(Math.max(0, 1 - aside * aside - up * up));
  return toDegrees(Math.atan2(aside * cos - forward * sin, Math.hypot(up, forward * cos)));
}

/** Length of the trunk from hips to shoulders at its longest, px. */
function trunkLengthPx(hips: PointPair, shoulders: PointPair, samples: number): number {
  const points = [...hips, ...shoulders];
  let longest = 1;
  for (let i = 0; i < samples; i++) {
    if (missingAt(points, i) !== 0) continue;
    const pelvis = middleAt(hips, i);
    const girdle = middleAt(shoulders, i);
    longest = Math.max(longest, distancePx(pelvis, girdle));
  }
  return longest;
}
