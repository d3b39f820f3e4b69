import type { MissingReason } from '#core/measurement/curve';
import { judgementOf } from '#core/scoring/judge';
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
export function readPeak({ ranges, judgement }: RecordingRepetition): Peak {
  const { max } = ranges['knee-angle'];
  const { verdict, reason } = judgementOf(judgement, 'knee-angle');
  if (verdict === 'not-measured' || max === null) {
    return { peakDeg: null, bandDeg: null, reason: reason ?? 'frames-missing' };
  }
  return { peakDeg: max.value, bandDeg: max.band, reason: null };
}
