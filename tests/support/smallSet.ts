import { keypointCount } from '#core/keypoints/keypointNames';
import type { KeypointTrack, TimedRow } from '#core/keypoints/keypointTrack';
import { defaultLimits } from '#core/protocol/limits';
import type { SetStart } from '#device/storage/keptSchemas';
import { smallRecording, smallSetup } from './smallRecording';
import { smallSession } from './smallSession';

/** The start of the set whose recording is smallRecording(), in the session smallSession(). */
export function smallSetStart(): SetStart {
  const { id, createdAt, note, video, observed } = smallRecording();
  const session = smallSession();
  return {
    id,
    startedAt: createdAt,
    visitId: session.id,
    visitSet: { ...session.sets[0]!, sessionId: null, cutShort: null },
    setup: smallSetup,
    limits: defaultLimits,
    note,
    widthPx: video.widthPx,
    heightPx: video.heightPx,
    model: { ...observed.model, size: 'lite' },
    videoType: 'video/webm;codecs=vp8',
  };
}

/** A track's frames as a tracker gives them; null where nobody is seen. */
export function rowsOf(track: KeypointTrack): TimedRow[] {
  return Array.from(track.timesMs, (timeMs, frame) => {
    const row = new Float32Array(keypointCount * 3);
    let isSeen = false;
    for (let point = 0; point < keypointCount; point++) {
      const at = frame * keypointCount + point;
      row.set([track.xPx[at]!, track.yPx[at]!, track.score[at]!], point * 3);
      isSeen ||= track.score[at]! > 0;
    }
    return { timeMs, row: isSeen ? row : null };
  });
}
