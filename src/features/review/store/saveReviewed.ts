import { recordingHead, type RecordingHead } from '#documents/recording/recordingHead';
import type { RecordingFacts } from '#device/storage/keptSchemas';
import type { Repository } from '#device/storage/repository';
import { reviewOnto } from './reviewOnto';

/**
 * Keeps a reviewed session. One that was measured from its video meanwhile keeps the newer joints, measured with what the
 * review says.
 *
 * @param fromVideo  how far that was when the session was opened
 */
export async function saveReviewed(
  { recordings }: Pick<Repository, 'recordings'>,
  recording: RecordingHead,
  fromVideo: RecordingFacts['fromVideo'],
): Promise<void> {
  const now = fromVideo === 'waiting' ? await recordings.find(recording.id) : null;
  const isNewer = now !== null && now.facts.fromVideo !== fromVideo;
  await recordings.update(isNewer ? recordingHead(reviewOnto(now.recording, recording)) : recording);
}
