import type { CloserFrame } from '#core/looks/closerLook';
import { combineLooks } from '#core/looks/combineLooks';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { recordingTrack } from '#documents/recording/recordingTrack';
import type { PlainLook } from '../../headless/headlessPage';
import { remeasureRecording, type ObservedRecording } from './remeasureRecording';

/** Measures a recording again from its joints as several looks together see them. */
export function withCloserLook(before: ObservedRecording, looks: readonly PlainLook[]): RecordingDocument {
  const { xPx, yPx, closer } = combineLooks(recordingTrack(before), looks.map(typedLook));
  const observed = { ...before.observed, xPx: Array.from(xPx), yPx: Array.from(yPx) };
  return remeasureRecording({
    ...before,
    observed: closer === undefined ? observed : { ...observed, closer },
  });
}

function typedLook({ frame, mirrored, second, secondMirrored }: PlainLook): CloserFrame {
  return {
    frame,
    mirrored: mirrored === null ? null : Float32Array.from(mirrored),
    second: Float32Array.from(second),
    secondMirrored: Float32Array.from(secondMirrored),
  };
}
