import { toDegrees } from '../geometry/degrees';
import { pointAt } from '../measurement/smoothPoints';
import { ownBand } from '../view/errorBand';
import { eitherWay } from './eitherWay';
import { farther } from './farther';
import type { Measure } from './measure';
import { nakagawa } from './nakagawa';
import { noSource } from './noSource';
import { peakColumns } from './peakColumns';
import { degrees } from './units';

/** How far the pelvis has sunk on the free side, from own standing, degrees, downward positive. */
export const pelvicDrop = {
  id: 'pelvic-drop',
  name: 'Pelvic drop',
  unit: degrees,
  ways: {
    least: { short: 'up', long: 'free side up' },
    most: { short: 'down', long: 'free side down' },
  },
  term: {
    term: 'Pelvic drop',
    meaning: 'How far the free side of the pelvis sank or rose, counted from own standing.',
  },
  series: ({ hips, fromStanding, bandShare }) => ({
    curve: fromStanding(hips, (i) => {
      const [own, other] = [pointAt(hips[0], i), pointAt(hips[1], i)];
      return toDegrees(Math.atan2(other.y - own.y, Math.abs(own.x - other.x)));
    }),
    band: (i) => ownBand(toDegrees(bandShare(Math.abs(pointAt(hips[0], i).x - pointAt(hips[1], i).x)))),
  }),
  hasFarBand: false,
  widestBand: null,
  peak: farther,
  heldAgainst: { least: 'min', most: 'max' },
  limits: eitherWay(
    { max: 20, step: 1, first: 11, source: `as far as downward: ${noSource}` },
    {
      source:
        'one standard deviation above the mean of people without knee pain in a single-leg squat (Nakagawa 2012); ' +
        'nothing is published for tasks on two feet',
      healthy: { ...nakagawa, mean: 7.4, sd: 3.8 },
    },
  ),
  isAlwaysLimited: false,
  hasSavedCurve: false,
  columns: peakColumns('pelvic_drop', farther),
} as const satisfies Measure;
