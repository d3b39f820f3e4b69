import { readFileSync } from 'node:fs';
import { csvParse } from 'd3-dsv';
import { describe, expect, it } from 'vitest';
import { keypointNames } from '#core/keypoints/keypointNames';
import { curveReason, curveValue } from '#core/measurement/curve';
import { measure } from '#core/measurement/measure';
import { framesCsv } from '#documents/csv/framesCsv';
import { smallSetup } from '../../../support/smallRecording';
import { filmPerson } from '../../../support/syntheticPerson';

const { track } = filmPerson({
  ...smallSetup,
  repetitions: [{ peakDeg: 13 }, { peakDeg: -4 }],
  rateHz: 40,
  unseen: [{ joint: 'right_knee', fromMs: 4100, untilMs: 4600 }],
});
for (const values of [track.xPx, track.yPx, track.score]) values.fill(0, 3 * 33, 4 * 33);
const measurement = measure(track, smallSetup);
const rows = csvParse(framesCsv({ track, measurement, note: 'Invented, all of it.' }).slice(1));

describe('framesCsv({ track, measurement, note })', () => {
  it('has a row a frame with the time of that frame', () => {
    expect(rows).toHaveLength(track.timesMs.length);
    rows.forEach((row, frame) => {
      expect(row['frame']).toBe(`${frame + 1}`);
      expect(Number(row['time_s'])).toBeCloseTo(track.timesMs[frame]! / 1000, 3);
    });
  });

  it('gives the knee angle, or why there is none: one of both, never both', () => {
    // The film is even, and the measurement has its rate: sample and frame are one.
    expect(measurement.timesMs).toHaveLength(track.timesMs.length);
    rows.forEach((row, frame) => {
      const value = curveValue(measurement.curves['knee-angle'], frame);
      if (value === null) expect(row['knee_angle_deg']).toBe('');
      else expect(Number(row['knee_angle_deg'])).toBeCloseTo(value, 2);
      expect(row['knee_angle_reason']).toBe(curveReason(measurement.curves['knee-angle'], frame) ?? '');
      expect(row['knee_angle_deg'] === '').toBe(row['knee_angle_reason'] !== '');
      expect(row['knee_off_line_pct_leg'] === '').toBe(row['knee_off_line_reason'] !== '');
    });
    expect(new Set(rows.map((row) => row['knee_angle_reason']))).toContain('joint-unseen');
  });

  it('gives all points as they were seen', () => {
    keypointNames.forEach((name, point) => {
      const at = 40 * 33 + point;
      const row = rows[40]!;
      expect(Number(row[`${name}_x_px`])).toBeCloseTo(track.xPx[at]!, 2);
      expect(Number(row[`${name}_y_px`])).toBeCloseTo(track.yPx[at]!, 2);
      expect(Number(row[`${name}_score`])).toBeCloseTo(track.score[at]!, 3);
    });
  });

  it('leaves the place empty where nobody was seen', () => {
    expect(rows[3]).toMatchObject({ nose_x_px: '', nose_y_px: '', nose_score: '0' });
  });

  it('names the repetition that is under way', () => {
    const numbers = rows.map((row) => row['repetition']);
    expect(new Set(numbers)).toEqual(new Set(['', '1', '2']));
    const { startMs, endMs } = measurement.repetitions[1]!.events;
    const within = [...track.timesMs].filter((timeMs) => timeMs >= startMs && timeMs <= endMs);
    expect(numbers.filter((number) => number === '2')).toHaveLength(within.length);
  });

  it('takes the nearest sample where frames come unevenly', () => {
    const timesMs = track.timesMs.map((timeMs, frame) => timeMs + (frame % 2 === 0 ? 0 : 10));
    const uneven = csvParse(framesCsv({ track: { ...track, timesMs }, measurement, note: '' }).slice(1));
    // Samples are 25 ms apart, so a frame that comes 10 ms late is still nearest to its own.
    expect(uneven.map((row) => row['knee_angle_deg'])).toEqual(rows.map((row) => row['knee_angle_deg']));
  });

  it('says in its first row that the person is invented', () => {
    expect(rows[0]!['note']).toBe('Invented, all of it.');
    expect(rows[1]!['note']).toBe('');
  });

  it('has every column named in docs/data-out.md', () => {
    const guide = readFileSync(new URL('../../../../docs/data-out.md', import.meta.url), 'utf8');
    const own = rows.columns.filter((name) => !keypointNames.some((point) => name.startsWith(`${point}_`)));
    for (const name of [...own, ...keypointNames]) expect(guide).toContain(`\`${name}\``);
  });
});
