import { findMeasure, type MeasureId } from '#core/measures/measures';

/** A value beside an axis: '10°', '6 %'; one that has a word for its direction is written without its sign. */
export function tickWords(id: MeasureId, value: number): string {
  const { unit, ways } = findMeasure(id);
  const scaled = Math.round(10 * unit.factor * value) / 10 + 0;
  return `${String(ways === null ? scaled : Math.abs(scaled)).replace('-', '−')}${unit.short}`;
}
