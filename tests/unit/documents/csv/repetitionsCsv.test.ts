import { readFileSync } from 'node:fs';
import { csvParse } from 'd3-dsv';
import { describe, expect, it } from 'vitest';
import { usualSureness } from '#core/chance/grade';
import { blankCurve, reasonCode } from '#core/measurement/curve';
import type { Measurement } from '#core/measurement/measurement';
import type { MeasureRange } from '#core/measurement/measureRange';
import { mapMeasures } from '#core/measures/measures';
import { judge, judgementOf } from '#core/scoring/judge';
import { repetitionsCsv } from '#documents/csv/repetitionsCsv';
import { rangesWith } from '../../../support/kneeJudgement';
import { smallRecordingParts } from '../../../support/smallRecording';

const limits = { 'knee-angle': { least: -7, most: 10 } };
const rowsOf = (measurement: Measurement, note = '') =>
  csvParse(repetitionsCsv([{ measurement, limits, sureness: usualSureness, note }]).slice(1));

/** Ten samples at 10 Hz: 0 to 9 degrees inward, then 13 and 11 in the last two; depth is missing all the time. */
function handMade(change: Partial<MeasureRange> = {}): Measurement {
  const { measurement } = smallRecordingParts();
  const angles = [0, 1, 2, 3, 4, 5, 6, 7, 13, 11];
  const kneeCurve = { ...blankCurve(10), values: Float64Array.from(angles) };
  const unseen = { ...blankCurve(10), missing: new Uint8Array(10).fill(reasonCode('joint-unseen')) };
  const at = (value: number, sample: number, band: number) => ({
    value,
    sample,
    timeMs: 500 + 100 * sample,
    band,
  });
  return {
    ...measurement,
    rateHz: 10,
    timesMs: Float64Array.from({ length: 10 }, (_, i) => 500 + 100 * i),
    curves: { ...mapMeasures(() => blankCurve(10)), 'knee-angle': kneeCurve, depth: unseen },
    repetitions: [
      {
        number: 1,
        completeness: 'complete',
        events: {
          startMs: 400,
          seatOffMs: 512.3456,
          topMs: 900,
          topEndMs: null,
          bottomMs: null,
          seatContactMs: 1390,
          endMs: 1500,
        },
        loadedFrom: 0,
        loadedTo: 9,
        ranges: rangesWith({
          'knee-angle': { min: at(0, 0, 1.5), max: at(13, 8, 2.345), measuredShare: 1, ...change },
          'knee-off-line': { min: at(-0.0312, 7, 0.011), max: at(0.01, 2, 0.011) },
          'pelvic-drop': { min: at(-4.5, 6, 1.25), max: at(4.4, 3, 1.25) },
          'pelvis-place': { min: at(0.25, 3, 0.05), max: at(0.5, 4, 0.05) },
          depth: { mainReason: 'joint-unseen' },
        }),
      },
    ],
  };
}

describe('repetitionsCsv({ measurement, limits, sureness, note })', () => {
  it('gives a repetition with its verdict, its worst angle and every measure with its band', () => {
    const [row] = rowsOf(handMade(), 'Invented.');
    expect(row).toMatchObject({
      repetition: '1',
      task: 'split-stance-sit-to-stand',
      side: 'right',
      completeness: 'complete',
      verdict: 'out',
      reason: '',
      direction: 'inward',
      worst_knee_angle_deg: '13',
      worst_knee_angle_band_deg: '2.35',
      worst_knee_angle_at_s: '1.3',
      // Eight of ten samples within 10 degrees; two samples at 10 Hz beyond.
      alignment_score_pct: '80',
      out_of_limits_s: '0.2',
      measured_share_pct: '100',
      unmeasured_reason: '',
      limit_inward_deg: '10',
      limit_outward_deg: '7',
      knee_angle_smallest_deg: '0',
      knee_off_line_pct_leg: '-3.12',
      knee_off_line_band_pct_leg: '1.1',
      knee_off_line_at_s: '1.2',
      knee_off_line_reason: '',
      pelvic_drop_deg: '-4.5',
      pelvic_drop_band_deg: '1.25',
      pelvis_place_pct_stance: '25',
      depth_pct_leg: '',
      depth_reason: 'joint-unseen',
      start_s: '0.4',
      seat_off_s: '0.512',
      top_end_s: '',
      turning_s: '',
      seat_contact_s: '1.39',
      end_s: '1.5',
      note: 'Invented.',
    });
  });

  it('gives the reason and no angle where there is no verdict', () => {
    const [row] = rowsOf(handMade({ measuredShare: 0.2, mainReason: 'out-of-picture' }));
    expect(row).toMatchObject({
      verdict: 'not-measured',
      reason: 'out-of-picture',
      measured_share_pct: '20',
    });
    for (const [name, cell] of Object.entries(row!))
      if (/^(worst_)?knee_angle|^alignment|^out_of|^direction/.test(name)) expect(cell, name).toBe('');
  });

  it('agrees with the judgement of each repetition of a filmed person', () => {
    const { measurement } = smallRecordingParts();
    const rows = rowsOf(measurement);
    expect(rows).toHaveLength(2);
    rows.forEach((row, i) => {
      const judgement = judge(measurement.repetitions[i]!, measurement, limits);
      const { verdict, alignmentScorePct } = judgement;
      const { extreme: worst } = judgementOf(judgement, 'knee-angle');
      expect(row['verdict']).toBe(verdict);
      expect(Number(row['worst_knee_angle_deg'])).toBeCloseTo(worst!.value, 2);
      expect(Number(row['alignment_score_pct'])).toBeCloseTo(alignmentScorePct!, 1);
    });
  });

  it('keeps a note from being run as a formula', () => {
    expect(rowsOf(handMade(), '=HYPERLINK("x")')[0]!['note']).toBe('\'=HYPERLINK("x")');
  });

  it('has a row of names alone where nothing was repeated', () => {
    expect(rowsOf({ ...handMade(), repetitions: [] })).toHaveLength(0);
  });

  it('has every column named in docs/data-out.md', () => {
    const guide = readFileSync(new URL('../../../../docs/data-out.md', import.meta.url), 'utf8');
    const missing = rowsOf(handMade()).columns.filter((name) => !guide.includes(`\`${name}\``));
    expect(missing).toEqual([]);
  });
});
