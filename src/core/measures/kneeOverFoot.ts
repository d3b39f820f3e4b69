import { cosSin } from '../view/bodyFrame';
import { footHeadingDeg } from '../view/footHeadingDeg';
import { eitherWay } from './eitherWay';
import { farther } from './farther';
import type { Measure } from './measure';
import { noSource } from './noSource';
import { peakColumns } from './peakColumns';
import { sidewaysOfKnee } from './sidewaysOfKnee';
import { shareOfLeg } from './units';

/** How far the knee stands to the side of the foot's axis through the ankle, share of leg length, inward positive. */
export const kneeOverFoot = {
  id: 'knee-over-foot',
  name: 'Knee over foot',
  unit: shareOfLeg,
  ...sidewaysOfKnee,
  term: {
    term: 'Knee over foot',
    meaning:
      'Where the knee was farthest sideways from the line of the foot, seen square to the body, as a share of leg ' +
      'length.',
  },
  series({ ofLeg, view, side, towardsMidline, legLength }) {
    const { heel, toe, footSeen, segments } = view.working;
    const footDeg = footHeadingDeg(heel, toe, side, footSeen, segments.shank, view.focalPx) ?? 0;
    const [cos, sin] = cosSin(footDeg - view.yaw.yawDeg);
    return ofLeg(({ knee, ankle }, _, i) => {
      const across = (knee.x[i]! - ankle.x[i]!) * cos + (knee.z[i]! - ankle.z[i]!) * sin;
      return (towardsMidline * across) / legLength;
    });
  },
  hasFarBand: false,
  widestBand: null,
  peak: farther,
  heldAgainst: { least: 'min', most: 'max' },
  // Foot breadth .055 of body height, leg .491: Drillis & Contini 1966.
  limits: eitherWay(
    { max: 0.2, step: 0.01, first: 0.06, source: `as far as inward: ${noSource}` },
    {
      source:
        'half a foot’s breadth (Drillis & Contini 1966), which is about its inner border. A rating of the step-down ' +
        'gives 2 points where the tibial tuberosity passes that border, and 1 where it passes the second toe (Piva ' +
        '2006; table in Manske & Davies 2016); here it is the knee’s middle against the foot’s axis',
    },
  ),
  isAlwaysLimited: false,
  hasSavedCurve: false,
  columns: peakColumns('knee_over_foot', farther),
} as const satisfies Measure;
