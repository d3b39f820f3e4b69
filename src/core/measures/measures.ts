import { depth } from './depth';
import { hipOverKnee } from './hipOverKnee';
import { kneeAngle } from './kneeAngle';
import { kneeOffLine } from './kneeOffLine';
import { kneeOverFoot } from './kneeOverFoot';
import type { Measure } from './measure';
import { pelvicDrop } from './pelvicDrop';
import { pelvisPlace } from './pelvisPlace';
import { trunkLean } from './trunkLean';

/** What is measured of a repetition, in the order in which it is shown. */
export const measures = [
  kneeAngle,
  kneeOffLine,
  kneeOverFoot,
  hipOverKnee,
  pelvicDrop,
  trunkLean,
  pelvisPlace,
  depth,
] as const;

type Listed = (typeof measures)[number];
export type MeasureId = Listed['id'];
/** Measures that always have both limits. */
export type AlwaysLimitedId = Extract<Listed, { isAlwaysLimited: true }>['id'];
/** Measures whose curve is saved sample by sample. */
export type SavedCurveId = Extract<Listed, { hasSavedCurve: true }>['id'];

export const measureIds = measures.map(({ id }) => id);

/** One value for each measure. */
export function mapMeasures<T>(make: (id: MeasureId, measure: Measure) => T): Record<MeasureId, T> {
  return mapOf(measures, make);
}

const byId = mapMeasures<Measure>((_, measure) => measure);

export function findMeasure(id: MeasureId): Measure {
  return byId[id];
}

/** One value for each measure that always has limits. */
export function mapAlwaysLimited<T>(make: (id: AlwaysLimitedId, measure: Measure) => T) {
  return mapOf(
    measures.filter((one) => one.isAlwaysLimited),
    make,
  );
}

/** One value for each measure whose curve is saved. */
export function mapSavedCurves<T>(make: (id: SavedCurveId, measure: Measure) => T) {
  return mapOf(
    measures.filter((one) => one.hasSavedCurve),
    make,
  );
}

function mapOf<Id extends MeasureId, T>(
  some: readonly (Measure & { id: Id })[],
  make: (id: Id, measure: Measure) => T,
): Record<Id, T> {
  return Object.fromEntries(some.map((one) => [one.id, make(one.id, one)])) as Record<Id, T>;
}
