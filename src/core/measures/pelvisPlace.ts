import type { Extreme } from '../measurement/measureRange';
import { noBand } from '../view/errorBand';
import type { Ends, Measure } from './measure';
import { noSource } from './noSource';
import { peakColumns } from './peakColumns';
import { placeOfPelvis } from './placeOfPelvis';
import { shareOfStance } from './units';

/** It counts how far the pelvis stayed away from the working foot. */
const peak = ({ min }: Ends): Extreme | null => min;

/** Where the middle of the hips stands between the ankles: 0 over the free foot, 1 over the working foot. */
export const pelvisPlace = {
  id: 'pelvis-place',
  name: 'Pelvis place',
  unit: shareOfStance,
  ways: null,
  term: {
    term: 'Pelvis place',
    meaning:
      'Where the middle of the pelvis stood between the feet when it was farthest from the working foot: 0 % is over ' +
      'the free foot, 100 % over the working foot.',
  },
  series({ feet, view, side, curve }) {
    const place = placeOfPelvis(view, side);
    return {
      curve: curve(feet, (i) => place(i)?.value ?? 'no-stance'),
      band: (i) => place(i)?.band ?? noBand,
    };
  },
  hasFarBand: false,
  widestBand: null,
  peak,
  heldAgainst: { least: 'min', most: 'max' },
  limits: {
    least: { min: 0, max: 1.5, step: 0.05, first: 0.5, source: `the middle between the feet: ${noSource}` },
    most: { min: 0, max: 1.5, step: 0.05, first: 1, source: `over the working foot: ${noSource}` },
  },
  isAlwaysLimited: false,
  hasSavedCurve: false,
  columns: peakColumns('pelvis_place', peak),
} as const satisfies Measure;
