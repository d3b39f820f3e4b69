import { otherSidePlaces } from '#core/correction/mirrorTrack';
import { keypointCount } from '#core/keypoints/keypointNames';
import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import type { Measurement } from '#core/measurement/measurement';
import { defaultLimits } from '#core/protocol/limits';
import type { Side } from '#core/protocol/side';
import { kneeDirection } from '#core/scoring/deciding';
import { judge } from '#core/scoring/judge';
import { verdictSide } from '#core/scoring/verdict';

/** What a person is told of which leg worked, and which way its knee went. */
export interface Told {
  side: Side;
  /** One a repetition that is called out of line, or probably; null where something else than the knee angle decided. */
  outOfLine: ('inward' | 'outward' | null)[];
  /** Whether a note says that the leg, or left and right, are in doubt. */
  isDoubted: boolean;
}

export function sideTold(measurement: Measurement): Told {
  const judged = measurement.repetitions.map((one) => judge(one, measurement, defaultLimits));
  return {
    side: measurement.setup.side,
    outOfLine: judged.filter(({ verdict }) => verdictSide(verdict) === 'out').map(kneeDirection),
    isDoubted: measurement.notes.some(({ kind }) => kind === 'side-doubtful' || kind === 'not-facing'),
  };
}

/** The joints with left and right names exchanged, each in its place: a network that took a back for a front. */
export function renamedTrack(track: KeypointTrack): KeypointTrack {
  const renamed = (values: Float32Array) =>
    values.map((_, at) => values[at - (at % keypointCount) + otherSidePlaces[at % keypointCount]!]!);
  return { ...track, xPx: renamed(track.xPx), yPx: renamed(track.yPx), score: renamed(track.score) };
}

/** The film in a picture turned clockwise. */
export function turnedTrack(track: KeypointTrack, deg: 90 | 180 | 270): KeypointTrack {
  const { widthPx, heightPx, xPx, yPx } = track;
  const left = (values: Float32Array, size: number) => values.map((value) => size - value);
  switch (deg) {
    case 90:
      return { ...track, widthPx: heightPx, heightPx: widthPx, xPx: left(yPx, heightPx), yPx: xPx };
    case 180:
      return { ...track, xPx: left(xPx, widthPx), yPx: left(yPx, heightPx) };
    case 270:
      return { ...track, widthPx: heightPx, heightPx: widthPx, xPx: yPx, yPx: left(xPx, widthPx) };
  }
}
