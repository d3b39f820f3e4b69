import { legLengthCm } from '#core/protocol/bodyHeight';
import type { Extreme } from '#core/measurement/measurement';
import { formatAngle } from './formatAngle';

type Banded = Pick<Extreme, 'value' | 'band'>;

/** A knee angle for a table: '14° in ±2'. */
export function shortAngle({ value, band }: Banded): string {
  return `${formatAngle(value).replace('ward', '')} ±${wholeBand(band)}`;
}

/** A knee angle for a sentence: '14 degrees inward, give or take 2'. */
export function longAngle({ value, band }: Banded): string {
  const angle = formatAngle(value);
  return `${angle.replace('°', angle.startsWith('1°') ? ' degree' : ' degrees')}, give or take ${wholeBand(band)}`;
}

/**
 * A share of leg length in centimetres, shown next to it: '3 cm', or null where the body height is not known.
 *
 * @param value  share of leg length, either sign
 */
export function shortCm({ value }: Banded, bodyHeightCm: number | undefined): string | null {
  if (bodyHeightCm === undefined) return null;
  return `${Math.round(Math.abs(value) * legLengthCm(bodyHeightCm))} cm`;
}

/** A band is never shown as 0. */
function wholeBand(band: number): number {
  return Math.max(1, Math.round(band));
}
