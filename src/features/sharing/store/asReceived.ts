import type { Limits } from '#core/protocol/limits';
import type { PlanDocument } from '#documents/plan/planDocument';
import { plannedLimits } from '#documents/plan/plannedLimits';
import { readRecording } from '#documents/recording/readRecording';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { reviewOnto } from '#documents/recording/reviewOnto';
import { plainName } from '#documents/schema/plainName';
import type { Parcel } from './parcel';

/**
 * A sent session as it is taken in: nothing that the sender's device concluded is believed. Angles and verdicts
 * are derived anew from the joints, against the limits of the plan, no recording counts as reviewed, nothing as settled by
 * the therapist, and the pseudonym has its plain form.
 *
 * @param plan  the one that the session follows, as it is kept here; null where there is none, and the limits that
 *   came with the recordings have to do
 */
export function asReceived(parcel: Parcel, plan: PlanDocument | null): Parcel {
  const { session, sets } = parcel;
  const limitsOf = (recordingId: string): Limits | null => {
    const line = session.sets.find(({ sessionId }) => sessionId === recordingId);
    return line === undefined ? null : plannedLimits(plan, line);
  };
  return {
    ...parcel,
    session: {
      ...session,
      patient: plainName(session.patient),
      settles: session.settles.filter(({ by }) => by !== 'therapist'),
    },
    sets: sets.map(({ recording, video }) => ({
      recording: derivedAnew(recording, limitsOf(recording.id) ?? recording.limits),
      video,
    })),
  };
}

function derivedAnew({ review, ...recording }: RecordingDocument, limits: Limits): RecordingDocument {
  return readRecording(reviewOnto(recording, { ...recording, limits }));
}
