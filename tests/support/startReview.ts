import { parseRecording } from '#documents/recording/parseRecording';
import { readRecordingHead } from '#documents/recording/readRecordingHead';
import type { RecordingHead } from '#documents/recording/recordingHead';
import { createReview } from '#features/review/store/createReview';
import type { KeptReview } from '#features/review/store/keptReview';
import { fakeAdapters, recordingText } from './fakeAdapters';

export const video = new File(['x'], 'stairs.mp4', { type: 'video/mp4' });

/** The review over fakes, before anything is opened. */
export function startReview() {
  const { adapters, world, tracking, navigation } = fakeAdapters();
  const review = createReview(adapters);
  return {
    review,
    tracking,
    world,
    adapters,
    navigation,
    /** What is shown, and where. */
    state: () => ({ ...review.store.getState(), screen: navigation.screen() }),
    trackingState: tracking.store.getState,
  };
}

/** With a video that was tracked. */
export async function trackedReview() {
  const started = startReview();
  await started.review.openFile(video);
  started.review.setSide('right');
  await started.review.startTracking();
  return started;
}

/** With a kept recording; what it saves is collected, unless there is another way to save. */
export async function keptReview(save?: KeptReview['save']) {
  const started = startReview();
  const { review } = started;
  const saved: RecordingHead[] = [];
  review.openKept(parseRecording(recordingText), 'a set', null, {
    session: null,
    save:
      save ??
      ((recording) => {
        saved.push(readRecordingHead(JSON.parse(JSON.stringify(recording))));
        return Promise.resolve();
      }),
    readOther: () => Promise.reject(new Error('There is no other.')),
  });
  await settle();
  const middleOf = (index: number) => {
    const { repetitions, timesMs } = review.store.getState().recording!.measurement;
    const { loadedFrom, loadedTo } = repetitions[index]!;
    return (timesMs[loadedFrom]! + timesMs[loadedTo]!) / 2;
  };
  return { ...started, saved, middleOf };
}

/** Until what was begun has been saved. */
export const settle = () => new Promise((resolve) => setTimeout(resolve, 0));
