import type { RecordingFacts } from '#device/storage/keptSchemas';
import type { Repository } from '#device/storage/repository';
import { recordingHead, type RecordingHead } from '#documents/recording/recordingHead';
import { reviewOnto } from './reviewOnto';

/**
 * Saves a reviewed recording. One that has been measured from its video in the meantime keeps the newer
 * joints, measured with the review's settings.
 *
 * @param fromVideo  how far that was when the recording was opened
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
