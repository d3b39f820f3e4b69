import { describe, expect, it } from 'vitest';
import { filmBounds } from '#core/keypoints/filmBounds';
import type { RecordingEnd, VideoRecording } from '#device/camera/recordVideo';
import { createLiveSet, type FinishedSet } from '#device/live/createLiveSet';
import {
  startSetRecorder,
  type RecorderEvent,
  type SetRecorderParts,
} from '#features/home/store/setRecorder';
import { createTestDevice } from '../../../../support/openTestRepository';
import { smallRecordingParts } from '../../../../support/smallRecording';
import { smallSession } from '../../../../support/smallSession';
import { rowsOf, smallSetStart } from '../../../../support/smallSet';

const start = smallSetStart();
const rows = rowsOf(smallRecordingParts().track);
const never = new Promise<never>(() => undefined);

/** A recorder whose parts can be made silent. */
async function begin({
  counts,
  stops,
}: { counts?: Promise<FinishedSet>; stops?: Promise<RecordingEnd> } = {}) {
  const repository = await createTestDevice().open();
  const events: RecorderEvent[] = [];
  let stopped = 0;
  let isOver = false;
  const video = (): VideoRecording => ({
    pause: () => undefined,
    resume: () => undefined,
    stop() {
      stopped++;
      return stops ?? Promise.resolve({ bytes: 0, problem: null });
    },
    ended: never,
    isOver: () => isOver,
    videoTimeMs: (pageMs) => (isOver ? null : pageMs),
  });
  const adapters: SetRecorderParts['adapters'] = {
    clockMs: () => 0,
    openFrameSource: () => Promise.reject(new Error('no video')),
    recordVideo: video,
    startLiveSet(setup) {
      const set = createLiveSet(setup);
      return {
        push: (frame) => void set.push(frame),
        go: (timeMs) => set.go(timeMs),
        finish: () => counts ?? Promise.resolve(set.finish()),
        failed: never,
        close: () => undefined,
      };
    },
  };
  const recorder = await startSetRecorder({
    adapters,
    repository,
    stream: {} as MediaStream,
    start,
    isCounting: true,
    onEvent: (event) => events.push(event),
    endsWithinMs: 30,
  });
  const { widthPx, heightPx } = start;
  const show = (at: readonly { timeMs: number; row: (typeof rows)[number]['row'] }[]) =>
    at.forEach(({ timeMs, row }) => recorder.push({ timeMs, row, widthPx, heightPx }));
  const endVideo = () => (isOver = true);
  return { recorder, repository, events, show, endVideo, stopped: () => stopped };
}

describe('startSetRecorder(parts)', () => {
  it('keeps and counts what comes after its video ended by itself', async () => {
    const { recorder, repository, show, endVideo } = await begin();
    const middle = Math.round(rows.length / 3);
    show(rows.slice(0, middle));
    endVideo();
    show(rows.slice(middle));
    const recorded = await recorder.finish(smallSession);
    expect(recorded!.recording.observed.timesMs).toEqual(rows.map(({ timeMs }) => timeMs));
    expect(recorded!.recording.derived.repetitions.length).toBeGreaterThan(0);
    const kept = await repository.recordings.find(recorded!.recording.id);
    expect(kept!.recording.observed.timesMs).toHaveLength(rows.length);
  });

  it.each([
    ['counting', { counts: never }],
    ['its video', { stops: never }],
    ['either', { counts: never, stops: never }],
  ])('keeps a set in time where %s never ends', async (_, silent) => {
    const { recorder, repository, show } = await begin(silent);
    show(rows);
    const recorded = await recorder.finish(smallSession);
    expect(recorded).toMatchObject({ isKept: true });
    const kept = await repository.recordings.find(start.id);
    expect(kept!.recording.observed.timesMs).toHaveLength(rows.length);
    expect(kept!.recording.derived.repetitions.length).toBeGreaterThan(0);
  });

  it('keeps a set in which the device slept, as time in which nobody was seen', async () => {
    const { recorder, repository, show } = await begin();
    const sleptMs = 60_000;
    show(rows);
    const lastMs = rows.at(-1)!.timeMs;
    show([{ timeMs: lastMs + sleptMs, row: rows[0]!.row }]);
    expect(await recorder.finish(smallSession)).toMatchObject({ isKept: true });
    const { observed } = (await repository.recordings.find(start.id))!.recording;
    const slept = observed.timesMs.filter((timeMs) => timeMs > lastMs && timeMs < lastMs + sleptMs);
    expect(slept.length).toBe(sleptMs / (filmBounds.gapMs / 2) - 1);
  });

  it('ends by itself at the longest that can be opened again, says so, and is kept', async () => {
    const { recorder, repository, events, show, stopped } = await begin();
    const everyMs = 4000;
    const { row } = rows[0]!;
    show(
      Array.from({ length: filmBounds.spanMs / everyMs + 10 }, (_, at) => ({ timeMs: at * everyMs, row })),
    );
    expect(events).toEqual([{ kind: 'problem', sentence: expect.stringMatching(/30 minutes/) as string }]);
    expect(stopped()).toBeGreaterThan(0);
    expect(await recorder.finish(smallSession)).toMatchObject({ isKept: true });
    const { observed } = (await repository.recordings.find(start.id))!.recording;
    expect(observed.timesMs.at(-1)).toBe(filmBounds.spanMs);
  });
});
