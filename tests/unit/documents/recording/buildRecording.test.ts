import { describe, expect, it } from 'vitest';
import { keypointNames } from '#core/keypoints/keypointNames';
import { measure } from '#core/measurement/measure';
import { judge } from '#core/scoring/judge';
import { buildRecording } from '#documents/recording/buildRecording';
import { parseRecording } from '#documents/recording/parseRecording';
import { recordingTrack } from '#documents/recording/recordingTrack';
import { smallRecordingParts, smallSetup } from '../../../support/smallRecording';

/** Points are kept to 0.01 px, so off by 0.005 at most, on a thigh of 90 px or more: 0.006 degrees a line; two lines. */
const keptDeg = 0.015;
/** And moves an event, interpolated between two samples, by no more than this. */
const keptMs = 1;

describe('buildSession(parts)', () => {
  const parts = smallRecordingParts();
  const recording = buildRecording(parts);

  it('says what was asked, and when', () => {
    expect(recording).toMatchObject({
      format: 'overfoot-session',
      version: 11,
      createdAt: '2024-03-05T07:08:09.010Z',
      note: 'An invented person.',
      setup: smallSetup,
      limits: { 'knee-angle': { least: -10, most: 8.5 } },
    });
  });

  it('keeps what was observed apart from what follows from it', () => {
    expect(recording.observed.points).toEqual(keypointNames);
    expect(recording.observed.timesMs).toHaveLength(parts.track.timesMs.length);
    recording.observed.xPx.forEach((xPx, i) =>
      expect(Math.abs(xPx - parts.track.xPx[i]!)).toBeLessThan(0.0051),
    );
    expect(Object.keys(recording.observed)).toEqual(['model', 'points', 'timesMs', 'xPx', 'yPx', 'score']);
  });

  it('writes null where there is no value, with the reason', () => {
    const { values, missing } = recording.derived.curves['knee-angle'];
    const covered = values.map((_, i) => missing.some(({ from, to }) => i >= from && i <= to));
    expect(values.map((value) => value === null)).toEqual(covered);
    expect(new Set(missing.map(({ reason }) => reason))).toEqual(
      new Set(['thigh-foreshortened', 'joint-unseen']),
    );
  });

  it('carries the judgement of each repetition by the limits of the recording', () => {
    recording.derived.repetitions.forEach(({ judgement }, i) =>
      expect(judgement).toEqual(judge(parts.measurement.repetitions[i]!, parts.measurement, parts.limits)),
    );
  });

  it('holds nothing that JSON can not hold', () => {
    // toEqual distinguishes 0 from -0, and null from NaN.
    expect(JSON.parse(JSON.stringify(recording))).toEqual(recording);
  });

  it('comes back from its text as it was', () => {
    expect(parseRecording(JSON.stringify(recording))).toEqual(recording);
  });

  it('gives the same result when measured again from its own text', () => {
    const back = parseRecording(JSON.stringify(recording));
    const again = measure(recordingTrack(back), back.setup);
    expect(again.repetitions.map(({ completeness }) => completeness)).toEqual(
      recording.derived.repetitions.map(({ completeness }) => completeness),
    );
    again.repetitions.forEach(({ events }, i) => {
      for (const [name, atMs] of Object.entries(events)) {
        const before = recording.derived.repetitions[i]!.events[name as keyof typeof events];
        expect(atMs === null).toBe(before === null);
        expect(Math.abs((atMs ?? 0) - (before ?? 0))).toBeLessThan(keptMs);
      }
    });
    expect(again.curves['knee-angle'].missing).toEqual(parts.measurement.curves['knee-angle'].missing);
    again.curves['knee-angle'].values.forEach((deg, i) =>
      expect(Math.abs(deg - parts.measurement.curves['knee-angle'].values[i]!)).toBeLessThan(keptDeg),
    );
    expect(again.notes).toEqual(parts.measurement.notes);
  });

  it('writes a recording without a single frame that can be read back', () => {
    const empty = {
      ...parts.track,
      timesMs: new Float64Array(),
      xPx: new Float32Array(),
      yPx: new Float32Array(),
    };
    const track = { ...empty, score: new Float32Array() };
    const nothing = buildRecording({ ...parts, track, measurement: measure(track, smallSetup) });
    expect(parseRecording(JSON.stringify(nothing))).toEqual(nothing);
  });
});
