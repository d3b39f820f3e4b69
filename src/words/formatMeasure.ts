import type { Extreme } from '#core/measurement/measureRange';
import { findMeasure, type MeasureId } from '#core/measures/measures';

type Banded = Pick<Extreme, 'value' | 'band'>;
type Length = 'short' | 'long';

/** A measure for a table, with its unit and band: '4 % in ±2'; docs/measurement.md defines each. */
export function formatMeasure(id: MeasureId, { value, band }: Banded): string {
  return `${formatted(id, value, 'short', 'short')} ±${wholeBand(id, band)}`;
}

/** A measure for a sentence: '4 % of leg length outward, give or take 2'. */
export function longMeasure(id: MeasureId, { value, band }: Banded): string {
  return `${formatted(id, value, 'long', 'long')}, give or take ${wholeBand(id, band)}`;
}

/** A measure without its band: '14° inward', '4 % outward'. */
export function formatValue(id: MeasureId, value: number): string {
  return formatted(id, value, 'short', 'long');
}

function formatted(id: MeasureId, value: number, unitLength: Length, wayLength: Length): string {
  const { unit, ways } = findMeasure(id);
  const scaled = unit.factor * value;
  // Halves are rounded away from 0, so that both directions are written alike; the sum with 0 turns -0 into 0.
  const whole = Math.sign(scaled) * Math.round(Math.abs(scaled)) + 0;
  const after =
    unitLength === 'long' && Math.abs(whole) === 1 ? (unit.longOne ?? unit.long) : unit[unitLength];
  if (ways === null) return `${String(whole).replace('-', '−')}${after}`;
  const way = whole === 0 ? '' : ` ${ways[whole > 0 ? 'most' : 'least'][wayLength]}`;
  return `${Math.abs(whole)}${after}${way}`;
}

/** A band is never shown as nothing. */
function wholeBand(id: MeasureId, band: number): number {
  return Math.max(1, Math.round(findMeasure(id).unit.factor * band));
}

/** The name of a measure within a sentence. */
export function measureName(id: MeasureId): string {
  return findMeasure(id).name.toLowerCase();
}
