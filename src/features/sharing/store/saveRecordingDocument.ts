import type { FromVideo } from '#device/storage/keptSchemas';
import type { Repository } from '#device/storage/repository';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import type { SessionDocument } from '#documents/session/sessionDocument';

/** Saves a recording from elsewhere, with its video, replacing one with the same id. */
export async function saveRecordingDocument(
  repository: Repository,
  recording: RecordingDocument,
  beside: {
    video: Blob | null;
    fromVideo: FromVideo;
    sessionId: string | null;
    session: SessionDocument | null;
  },
): Promise<void> {
  const { video, fromVideo, sessionId, session } = beside;
  await repository.recordings.remove(recording.id);
  const set = await repository.beginSet(
    {
      id: recording.id,
      startedAt: recording.createdAt,
      visitId: sessionId,
      visitSet: null,
      setup: recording.setup,
      limits: recording.limits,
      note: recording.note,
      widthPx: recording.video.widthPx,
      heightPx: recording.video.heightPx,
      model: recording.observed.model,
      videoType: video?.type ?? null,
    },
    () => undefined,
  );
  if (video !== null) await set.video?.write(video);
  await set.endVideo();
  await set.finish(recording, fromVideo, session);
}
