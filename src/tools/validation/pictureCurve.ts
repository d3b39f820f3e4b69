import { kneeProjectionAngleDeg } from '#core/geometry/kneeProjectionAngleDeg';
import { missingAt, pointAt, smoothPoints } from '#core/measurement/smoothPoints';
import type { SessionDocument } from '#documents/recording/sessionDocument';
import { sessionTrack } from '#documents/recording/sessionTrack';

/**
 * Knee angle as it stands in the picture, from the joints that a session holds: what the pose network alone is worth,
 * before any view is reckoned out.
 *
 * @returns  degrees, inward positive, on the time base of the session's own curves; null where a joint is unseen
 */
export function pictureCurve(session: SessionDocument): (number | null)[] {
  const { side } = session.setup;
  const points = smoothPoints(sessionTrack(session));
  const leg = (['hip', 'knee', 'ankle'] as const).map((joint) => points.point(`${side}_${joint}`));
  return Array.from(points.timesMs, (_, i) => {
    if (missingAt(leg, i) !== 0) return null;
    const [hip, knee, ankle] = leg.map((joint) => pointAt(joint, i));
    return kneeProjectionAngleDeg(hip!, knee!, ankle!, side);
  });
}
