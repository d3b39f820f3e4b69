import type { SessionDocument } from '#documents/recording/sessionDocument';
import type { VisitDocument } from '#documents/session/visitDocument';
import type { FromVideo } from '#device/storage/keptSchemas';
import type { Repository } from '#device/storage/repository';

/** Keeps a session that came from elsewhere, with its video, in the place of one with the same id. */
export async function keepSession(
  repository: Repository,
  session: SessionDocument,
  beside: { video: Blob | null; fromVideo: FromVideo; visitId: string | null; visit: VisitDocument | null },
): Promise<void> {
  const { video, fromVideo, visitId, visit } = beside;
  await repository.sessions.remove(session.id);
  const set = await repository.beginSet(
    {
      ...{ id: session.id, startedAt: session.createdAt, visitId, visitSet: null },
      ...{ setup: session.setup, limits: session.limits, note: session.note },
      ...{ widthPx: session.video.widthPx, heightPx: session.video.heightPx },
      ...{ model: session.observed.model, videoType: video?.type ?? null },
    },
    () => undefined,
  );
  if (video !== null) await set.video?.write(video);
  await set.endVideo();
  await set.finish(session, fromVideo, visit);
}
