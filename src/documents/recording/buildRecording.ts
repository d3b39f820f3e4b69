import type { Correction } from '#core/correction/correction';
import { keypointNames } from '#core/keypoints/keypointNames';
import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import { curveReason, curveValue, type Curve } from '#core/measurement/curve';
import { isSideDoubtful, type Measurement, type Setup } from '#core/measurement/measurement';
import { mapSavedCurves } from '#core/measures/measures';
import type { Limits } from '#core/protocol/limits';
import { judge } from '#core/scoring/judge';
import { recordingVersion, type RecordingDocument } from './recordingDocument';
import type { RecordingReview } from './reviewSchema';

export interface RecordingParts {
  id: string;
  createdAt: Date;
  note: string;
  limits: Limits;
  video: RecordingDocument['video'];
  model: RecordingDocument['observed']['model'];
  /** As it was seen, without corrections. */
  track: KeypointTrack;
  /** With corrections, where there are any. */
  measurement: Measurement;
  corrections?: readonly Correction[] | undefined;
  /** As it was before any correction; the measurement's own where there is none. */
  setup?: Setup;
  /** One per repetition: why it does not count; null where it counts. */
  excluded?: readonly (string | null)[];
  review?: RecordingReview | undefined;
}

/** Puts a measured recording into one document; points are rounded to 0.01 px, results to 0.0001 of their unit. */
export function buildRecording({
  id,
  createdAt,
  note,
  limits,
  video,
  model,
  track,
  measurement,
  corrections = [],
  setup = measurement.setup,
  excluded = [],
  review,
}: RecordingParts): RecordingDocument {
  return {
    format: 'overfoot-session',
    version: recordingVersion,
    id,
    createdAt: createdAt.toISOString(),
    note,
    setup,
    limits,
    video,
    observed: {
      model,
      points: [...keypointNames],
      timesMs: rounded(track.timesMs, 3),
      xPx: rounded(track.xPx, 2),
      yPx: rounded(track.yPx, 2),
      score: rounded(track.score, 3),
      ...(track.closer === undefined ? {} : { closer: track.closer }),
    },
    ...(corrections.length > 0 ? { corrections: [...corrections] } : {}),
    derived: deriveRecording(measurement, limits, excluded),
    ...(review === undefined ? {} : { review }),
  };
}

/** The part of a recording document that is derived from the rest. */
export function deriveRecording(
  measurement: Measurement,
  limits: Limits,
  excluded: readonly (string | null)[],
): RecordingDocument['derived'] {
  return {
    measuringVersion: measurement.version,
    rateHz: measurement.rateHz,
    startMs: measurement.timesMs[0] ?? 0,
    legLengthPx: measurement.legLengthPx,
    view: measurement.view,
    curves: mapSavedCurves((id) => curveToDocument(measurement.curves[id])),
    repetitions: measurement.repetitions.map((repetition, index) => ({
      ...repetition,
      ...withReason(excluded[index]),
      judgement: judge(repetition, measurement, limits),
    })),
    ...(isSideDoubtful(measurement) ? { isSideDoubtful: true } : {}),
  };
}

function withReason(excluded: string | null | undefined): { excluded?: string } {
  return excluded === null || excluded === undefined ? {} : { excluded };
}

type SavedCurve = RecordingDocument['derived']['curves']['knee-angle'];

function curveToDocument(curve: Curve): SavedCurve {
  const values = Array.from(curve.values, (_, sample) => {
    const value = curveValue(curve, sample);
    return value === null ? null : round(value, 4);
  });
  const missing: SavedCurve['missing'] = [];
  values.forEach((_, sample) => {
    const reason = curveReason(curve, sample);
    const open = missing.at(-1);
    if (reason === null) return;
    if (open !== undefined && open.reason === reason && open.to === sample - 1) open.to = sample;
    else missing.push({ from: sample, to: sample, reason });
  });
  return { values, missing };
}

function rounded(values: ArrayLike<number>, digits: number): number[] {
  return Array.from(values, (value) => round(value, digits));
}

function round(value: number, digits: number): number {
  const factor = 10 ** digits;
  // The sum with 0 turns -0, which JSON can't hold, into 0.
  return Math.round(value * factor) / factor + 0;
}
