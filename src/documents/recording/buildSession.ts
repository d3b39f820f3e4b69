import { keypointNames } from '#core/keypoints/keypointNames';
import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import { curveReason, curveValue, type Curve } from '#core/measurement/curve';
import type { Correction } from '#core/correction/correction';
import type { Measurement, Setup } from '#core/measurement/measurement';
import type { Limits } from '#core/protocol/limits';
import { judge } from '#core/scoring/judge';
import type { SessionReview } from './reviewSchema';
import { sessionVersion, type SessionDocument } from './sessionDocument';

export interface SessionParts {
  id: string;
  createdAt: Date;
  note: string;
  limits: Limits;
  video: SessionDocument['video'];
  model: SessionDocument['observed']['model'];
  /** As it was seen, without corrections. */
  track: KeypointTrack;
  /** With corrections, where there are some. */
  measurement: Measurement;
  corrections?: readonly Correction[] | undefined;
  /** As it was before any correction; the measurement's own where there is none. */
  setup?: Setup;
  /** One a repetition: why it does not count; null where it counts. */
  excluded?: readonly (string | null)[];
  review?: SessionReview | undefined;
}

/** Puts a measured recording into one document; points are kept to 0.01 px, results to 0.0001 of their unit. */
export function buildSession({
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
}: SessionParts): SessionDocument {
  return {
    format: 'overfoot-session',
    version: sessionVersion,
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
    },
    ...(corrections.length > 0 ? { corrections: [...corrections] } : {}),
    derived: deriveSession(measurement, limits, excluded),
    ...(review === undefined ? {} : { review }),
  };
}

/** The part of a session document that follows from the rest. */
export function deriveSession(
  measurement: Measurement,
  limits: Limits,
  excluded: readonly (string | null)[],
): SessionDocument['derived'] {
  return {
    measuringVersion: measurement.version,
    rateHz: measurement.rateHz,
    startMs: measurement.timesMs[0] ?? 0,
    legLengthPx: measurement.legLengthPx,
    view: measurement.view,
    kneeAngleDeg: curveToDocument(measurement.kneeAngleDeg),
    kneeDeviation: curveToDocument(measurement.kneeDeviation),
    repetitions: measurement.repetitions.map((repetition, index) => {
      const { ranges, ...kept } = repetition; // They only serve to judge.
      return {
        ...kept,
        ...withReason(excluded[index]),
        judgement: judge(repetition, measurement, limits),
      };
    }),
  };
}

function withReason(excluded: string | null | undefined): { excluded?: string } {
  return excluded === null || excluded === undefined ? {} : { excluded };
}

function curveToDocument(curve: Curve): SessionDocument['derived']['kneeAngleDeg'] {
  const values = Array.from(curve.values, (_, sample) => {
    const value = curveValue(curve, sample);
    return value === null ? null : round(value, 4);
  });
  const missing: SessionDocument['derived']['kneeAngleDeg']['missing'] = [];
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
