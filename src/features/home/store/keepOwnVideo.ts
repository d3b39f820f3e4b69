import type { SetStart } from '#device/storage/keptSchemas';
import type { Repository } from '#device/storage/repository';
import { buildRecording } from '#documents/recording/buildRecording';
import type { SessionDocument } from '#documents/session/sessionDocument';
import { explainProblem } from '#shell/explainProblem';
import type { ShownRecording } from '#shell/tracking/shownRecording';
import type { RecordedSet } from './setRecorder';

/**
 * Keeps a set that was filmed with another camera, measured from its video already, with a copy of the video, from which
 * it is measured again with the closer look. Where there is no room for the copy the rest is kept all the same. Never
 * rejects.
 */
export async function keepOwnVideo(
  start: SetStart,
  { track, measurement, videoFacts }: ShownRecording,
  file: Blob,
  repository: Repository,
  session: () => SessionDocument,
): Promise<RecordedSet> {
  const { id, startedAt, limits, note, model } = start;
  const createdAt = new Date(startedAt);
  const recording = buildRecording({
    id,
    createdAt,
    note,
    limits,
    model,
    video: videoFacts,
    track,
    measurement,
  });
  const keep = async (how: SetStart) => {
    const open = await repository.beginSet(how, () => undefined);
    try {
      await open.video?.write(file);
      await open.finish(recording, how.videoType === null ? 'done' : 'waiting', session());
    } catch (error) {
      await open.drop().catch(() => undefined); // What is left of it is offered the next time, and can be dropped there.
      throw error;
    }
  };
  const isKept = repository.lasting.records;
  try {
    await keep(start);
    return { recording, isKept, isWaiting: true, problem: null };
  } catch (error) {
    const problem = explainProblem(error, 'keep').sentence;
    const isWithout = await keep({ ...start, videoType: null }).then(
      () => true,
      () => false,
    );
    return { recording, isKept: isKept && isWithout, isWaiting: false, problem };
  }
}
