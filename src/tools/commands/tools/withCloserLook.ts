import { closerExtent, type CloserFrame } from '#core/looks/closerLook';
import { combineLooks } from '#core/looks/combineLooks';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { recordingTrack } from '#documents/recording/recordingTrack';
import type { PlainLook } from '../../headless/headlessPage';
import { remeasureRecording, type ObservedRecording } from './remeasureRecording';

/** Measures a recording again from its joints as several looks together see them. */
export function withCloserLook(before: ObservedRecording, looks: readonly PlainLook[]): RecordingDocument {
  const track = recordingTrack(before);
  const closer = looks.map(typedLook);
  const { xPx, yPx } = combineLooks(track, closer);
  const observed = { ...before.observed, xPx: Array.from(xPx), yPx: Array.from(yPx) };
  const extent = closerExtent(closer, track.timesMs);
  return remeasureRecording({
    ...before,
    observed: extent === null ? observed : { ...observed, closer: extent },
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
