import type { Extreme } from '#core/measurement/measurement';
import type { LimitEnd } from '#core/protocol/limits';
import type { MeasureId } from '#core/measures/measures';

/** Names as they head a column. */
export const measureNames: Record<MeasureId, string> = {
  'knee-off-line': 'Knee off line',
  'knee-over-foot': 'Knee over foot',
  'hip-over-knee': 'Hip over knee',
  'pelvic-drop': 'Pelvic drop',
  'trunk-lean': 'Trunk lean',
  'pelvis-place': 'Pelvis place',
  depth: 'Depth',
};

/** How a measure is shown: what it is multiplied by, and what follows the number. */
interface Unit {
  factor: number;
  short: string;
  long: string;
}

const degrees: Unit = { factor: 1, short: '°', long: '°' };
const ofLeg: Unit = { factor: 100, short: ' %', long: ' % of leg length' };

export const measureUnits: Record<MeasureId, Unit> = {
  'knee-off-line': ofLeg,
  'knee-over-foot': ofLeg,
  'hip-over-knee': ofLeg,
  'pelvic-drop': degrees,
  'trunk-lean': degrees,
  'pelvis-place': { factor: 100, short: ' %', long: ' % of the stance' },
  depth: ofLeg,
};

/** A direction in words: short for a table, long for a sentence. */
interface Way {
  short: string;
  long: string;
}

const ofKnee: Record<LimitEnd, Way> = {
  least: { short: 'out', long: 'outward' },
  most: { short: 'in', long: 'inward' },
};

/** The directions of a measure in words, below 0 and above; null where it has none. */
export const measureWays: Record<MeasureId, Record<LimitEnd, Way> | null> = {
  'knee-off-line': ofKnee,
  'knee-over-foot': ofKnee,
  'hip-over-knee': ofKnee,
  'pelvic-drop': {
    least: { short: 'up', long: 'free side up' },
    most: { short: 'down', long: 'free side down' },
  },
  'trunk-lean': {
    least: { short: 'away', long: 'away from the working side' },
    most: { short: 'towards', long: 'towards the working side' },
  },
  'pelvis-place': null,
  depth: null,
};

type Banded = Pick<Extreme, 'value' | 'band'>;

/** A measure for a table, with its unit and band: '4 % in ±2'; docs/measurement.md defines each. */
export function formatMeasure(id: MeasureId, extreme: Banded): string {
  return formatted(id, extreme, 'short', ' ±');
}

/** A measure for a sentence: '4 % of leg length outward, give or take 2'. */
export function longMeasure(id: MeasureId, extreme: Banded): string {
  return formatted(id, extreme, 'long', ', give or take ');
}

function formatted(id: MeasureId, { value, band }: Banded, length: 'short' | 'long', before: string): string {
  const { factor, [length]: unit } = measureUnits[id];
  const ways = measureWays[id];
  const whole = Math.round(factor * value);
  const way = ways === null || whole === 0 ? '' : ` ${ways[whole > 0 ? 'most' : 'least'][length]}`;
  const number = ways === null ? String(whole + 0).replace('-', '−') : Math.abs(whole);
  // A band is never shown as 0.
  return `${number}${unit}${way}${before}${Math.max(1, Math.round(factor * band))}`;
}
