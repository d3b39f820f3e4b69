import type { Extreme } from '../measurement/measurement';
import type { OtherMeasureId } from '../measurement/otherMeasures';
import { shortDeviation } from './formatWithBand';

type MeasureName = 'knee-off-line' | OtherMeasureId;

/** Names as they head a column. */
export const measureNames: Record<MeasureName, string> = {
  'knee-off-line': 'Knee off line',
  'knee-over-foot': 'Knee over foot',
  'hip-over-knee': 'Hip over knee',
  'pelvic-drop': 'Pelvic drop',
  'trunk-lean': 'Trunk lean',
  'pelvis-place': 'Pelvis place',
  depth: 'Depth',
};

/** A measure for a table, with its unit and band; docs/measurement.md says each in full. */
export function formatMeasure(name: MeasureName, { value, band }: Pick<Extreme, 'value' | 'band'>): string {
  switch (name) {
    case 'knee-off-line':
    case 'knee-over-foot':
    case 'hip-over-knee':
      return shortDeviation({ value, band });
    case 'pelvic-drop':
    case 'trunk-lean':
      return `${Math.round(value)}° ±${Math.max(1, Math.round(band))}`.replace('-0°', '0°').replace('-', '−');
    case 'pelvis-place':
    case 'depth':
      return `${Math.round(100 * value)} % ±${Math.max(1, Math.round(100 * band))}`.replace('-', '−');
  }
}
