import type { CsvColumn, Measure } from './measure';

/** The columns of a measure that is given by one value a repetition. */
export function peakColumns(name: string, peak: Measure['peak']): readonly CsvColumn[] {
  return [
    { kind: 'extreme', name, of: peak, needsVerdict: false },
    { kind: 'limit', name: `${name}_least`, end: 'least', isDistance: false },
    { kind: 'limit', name: `${name}_most`, end: 'most', isDistance: false },
    { kind: 'reason', name: `${name}_reason` },
  ];
}
