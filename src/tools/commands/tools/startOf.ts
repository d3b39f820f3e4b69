import type { SetStart } from '#device/storage/keptSchemas';
import type { RecordingDocument } from '#documents/recording/recordingDocument';

/** How the set of a recording began, for writing it as a set at home is written. */
export function startOf({
  id,
  createdAt,
  setup,
  limits,
  note,
  video,
  observed,
}: RecordingDocument): SetStart {
  const { widthPx, heightPx } = video;
  return {
    id,
    startedAt: createdAt,
    visitId: null,
    visitSet: null,
    setup,
    limits,
    note,
    widthPx,
    heightPx,
    model: observed.model,
    videoType: 'video/mp4',
  };
}
