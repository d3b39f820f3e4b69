import { kneeProjectionAngleDeg } from '#core/geometry/kneeProjectionAngleDeg';
import { missingAt, pointAt, smoothPoints } from '#core/measurement/smoothPoints';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { recordingTrack } from '#documents/recording/recordingTrack';

/**
 * Knee angle as it appears in the picture, from the joints in a recording: the accuracy of the pose network
 * alone, before the view is corrected.
 *
 * @returns  degrees, inward positive, on the time base of the recording's own curves; null where a joint is
 * unseen
 */
export function pictureCurve(recording: RecordingDocument): (number | null)[] {
  const { side } = recording.setup;
  const points = smoothPoints(recordingTrack(recording));
  const leg = (['hip', 'knee', 'ankle'] as const).map((joint) => points.point(`${side}_${joint}`));
  return Array.from(points.timesMs, (_, i) => {
    if (missingAt(leg, i) !== 0) return null;
    const [hip, knee, ankle] = leg.map((joint) => pointAt(joint, i));
    return kneeProjectionAngleDeg(hip!, knee!, ankle!, side);
  });
}
