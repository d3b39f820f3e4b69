import type { MissingReason } from '#core/measurement/curve';
import type { RecordingDocument } from '#documents/recording/recordingDocument';

export type RecordingRepetition = RecordingDocument['derived']['repetitions'][number];

/** The peak of a repetition as the tool tells it. */
export interface Peak {
  /** Greatest inward knee angle while loaded, degrees, inward positive; null where the tool gives no number. */
  peakDeg: number | null;
  /** Half-width of its error band, degrees; null where the tool states none. */
  bandDeg: number | null;
  /** Why there is no number, else null. */
  reason: MissingReason | null;
}

/** The one place where the comparison reads a repetition's peak and its error band. */
export function readPeak({ kneeAngleMaxDeg, mainReason, judgement }: RecordingRepetition): Peak {
  if (judgement.knee === 'not-measured' || kneeAngleMaxDeg === null) {
    return { peakDeg: null, bandDeg: null, reason: judgement.reason ?? mainReason ?? 'frames-missing' };
  }
  return { peakDeg: kneeAngleMaxDeg.value, bandDeg: kneeAngleMaxDeg.band, reason: null };
}
