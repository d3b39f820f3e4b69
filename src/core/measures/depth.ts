import type { Extreme } from '../measurement/measureRange';
import type { Side } from '../protocol/side';
import type { FrontalLeg } from '../view/frontalKneeAngle';
import type { Ends, Measure } from './measure';
import { peakColumns } from './peakColumns';
import { shareOfLeg } from './units';

/**
 * How far the hip sinks when the knee bends, thigh and shank leaning alike: one less the cosine of half the angle.
 *
 * @param bendDeg  from straight, 0 to 180 degrees
 * @returns  share of leg length, 0 for a straight knee, 1 for one bent by 180 degrees
 * Source:  an isosceles triangle of thigh and shank
 */
export function depthOfBend(bendDeg: number): number {
  return 1 - Math.cos((bendDeg * Math.PI) / 360);
}

const bent = { min: 0.02, max: 0.6, step: 0.01 };
/** Of both limits, as depthOfBend() gives them. */
const knees = 'knees bent by 90° and 45°, thigh and shank leaning alike; no published value';
const peak = ({ max }: Ends): Extreme | null => max;

/** How far the hip stands below where a straight leg would hold it, from own standing, share of leg length. */
export const depth = {
  id: 'depth',
  name: 'Depth',
  unit: shareOfLeg,
  ways: null,
  term: {
    term: 'Depth',
    meaning: 'How far the hip sank at the lowest point, counted from own standing, as a share of leg length.',
  },
  series({ leg, view, side, legLength, fromStanding, legBand }) {
    const sunk = ({ hip, ankle }: FrontalLeg, _: Side, i: number) => (hip.y[i]! - ankle.y[i]!) / legLength;
    return { curve: fromStanding(leg, (i) => sunk(view.frontal, side, i)), band: legBand(sunk) };
  },
  hasFarBand: false,
  widestBand: null,
  peak,
  // Every repetition begins at no depth: it is the deepest point that has to reach the least.
  heldAgainst: { least: 'max', most: 'max' },
  limits: {
    least: {
      ...bent,
      first: 0.08,
      source: knees,
    },
    most: {
      ...bent,
      first: 0.29,
      source: knees,
    },
  },
  isAlwaysLimited: false,
  hasSavedCurve: false,
  columns: peakColumns('depth', peak),
} as const satisfies Measure;
