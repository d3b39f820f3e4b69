import { createGrowingTrack } from '#core/keypoints/createGrowingTrack';
import { filmBounds } from '#core/keypoints/filmBounds';
import { RecordingProblem } from '#device/camera/recordingProblem';
import type { VideoRecording } from '#device/camera/recordVideo';
import { inTime } from '#device/inTime';
import type { LiveSetEvent } from '#device/live/createLiveSet';
import type { LiveFrame } from '#device/live/liveFrame';
import type { RunningSet } from '#device/live/startLiveSet';
import type { SetStart } from '#device/storage/keptSchemas';
import type { OpenSet, Repository } from '#device/storage/repository';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import type { SessionDocument } from '#documents/session/sessionDocument';
import { explainProblem } from '#shell/explainProblem';
import { buildSetRecording } from '#shell/tracking/buildSetRecording';
import { loadVideoFacts } from '#shell/tracking/loadVideoFacts';
import { message } from '#words/messages/message';
import type { HomeAdapters } from './homeAdapters';

export interface RecordedSet {
  recording: RecordingDocument;
  isKept: boolean;
  /** Whether it waits to be measured again from its video. */
  isWaiting: boolean;
  /** Why something of it is not kept; null where all is. */
  problem: string | null;
}

/** One set while it is recorded: its video, its joints and its counting. */
export interface SetRecorder {
  /** A picture's joints, its time on the page's clock. */
  push(frame: LiveFrame): void;
  /** The set begins now; a set that has begun is not restarted. */
  go(): void;
  pause(): void;
  resume(): void;
  /** Resolves once all joints so far are kept. */
  flush(): Promise<void>;
  /** Ends it and keeps it; null where no joint was ever looked for. Never rejects. */
  finish(session: () => SessionDocument): Promise<RecordedSet | null>;
  /** Ends it and deletes everything of it. Never rejects. */
  discard(): Promise<void>;
}

/** What is reported of a set while it is recorded. */
export type RecorderEvent =
  | LiveSetEvent
  /** Counting has failed. */
  | { kind: 'counting-failed' }
  /** Something of it can't be kept; the set continues with what is left. */
  | { kind: 'problem'; sentence: string };

export interface SetRecorderParts {
  adapters: Pick<HomeAdapters, 'startLiveSet' | 'recordVideo' | 'openFrameSource' | 'clockMs'>;
  repository: Repository;
  stream: MediaStream;
  start: SetStart;
  /** Whether repetitions are counted while they happen. */
  isCounting: boolean;
  onEvent: (event: RecorderEvent) => void;
  /** How long the end of its counting and of its video is waited for, ms; then it is kept without what is missing. */
  endsWithinMs?: number;
}

/** A part that has not ended by then never will, ms. */
const slowestEndMs = 20_000;
/** The last pieces of a video may be missing, ms. */
const shortVideoMs = 2000;
/** A longer pause between two pictures, as of a device that slept, is noted as time in which nobody was seen, ms. */
const noteEveryMs = filmBounds.gapMs / 2;
const tooLong = () => message('trouble.set-too-long', { minutes: filmBounds.spanMs / 60_000 });

/**
 * Begins to record a set. Whatever fails, the rest continues: without storage in memory, without a video with
 * the joints, without counting with what is measured afterwards.
 */
export async function startSetRecorder(parts: SetRecorderParts): Promise<SetRecorder> {
  const { endsWithinMs = slowestEndMs } = parts;
  const { adapters, repository, stream, onEvent } = parts;
  let { start } = parts;
  let problem: string | null = null;
  const tell = (error: unknown) => {
    problem = error instanceof RecordingProblem ? error.message : explainProblem(error, 'keep').sentence;
    onEvent({ kind: 'problem', sentence: problem });
  };
  const joints = createGrowingTrack(start.widthPx, start.heightPx);
  let firstMs: number | null = null;
  let lastMs: number | null = null;
  let frames = 0;
  const open = await repository.beginSet(start, tell).catch((error: unknown) => {
    tell(error);
    return null;
  });
  const video = recordTo(open);
  const clock = createSetClock(video, adapters.clockMs);
  const live = parts.isCounting ? startCounting() : null;
  let isEnded = false;

  function recordTo(set: OpenSet | null): VideoRecording | null {
    if (set === null || set.video === null || start.videoType === null) return null;
    try {
      return adapters.recordVideo(stream, set.video, {
        mimeType: start.videoType,
        onProblem: (reason) => {
          // The camera itself reports when it stops.
          if (reason.kind !== 'camera-ended') tell(reason);
        },
      });
    } catch (error) {
      if (!(error instanceof RecordingProblem && error.kind === 'camera-ended')) tell(error);
      return null;
    }
  }
  function startCounting(): RunningSet {
    const { setup, limits, widthPx, heightPx } = start;
    // Counted on the video's own clock, so that what is measured from the video later has the same times.
    const set = adapters.startLiveSet(
      { setup, limits, widthPx, heightPx, startMs: 0, awaitsGo: true },
      onEvent,
    );
    set.failed.catch(() => {
      if (!isEnded) onEvent({ kind: 'counting-failed' });
    });
    return set;
  }
  const timeOf = clock.timeMs;

  const measured = async () => {
    const finished = live === null ? null : await inEndTime(live.finish()).catch(() => null);
    live?.close();
    if (finished !== null) return finished;
    return { track: joints.copy(), measurement: undefined };
  };
  const end = async () => {
    isEnded = true;
    // What reached storage is kept.
    if (video !== null) await inEndTime(video.stop()).catch(() => undefined);
  };
  const inEndTime = <Value>(ending: Promise<Value>) =>
    inTime(ending, endsWithinMs, () => new Error('It did not end in time.'));
  const add = (frame: LiveFrame) => {
    const { timeMs, row } = frame;
    joints.append(timeMs, row);
    lastMs = timeMs;
    frames++;
    open?.addRow({ timeMs, row });
    live?.push(frame);
  };
  /** Whether it is as long as a set can be; then its video ends too. */
  const isFull = (timeMs: number) => {
    if (timeMs - (firstMs ?? timeMs) <= filmBounds.spanMs && frames < filmBounds.frames) return false;
    if (problem !== tooLong()) onEvent({ kind: 'problem', sentence: (problem = tooLong()) });
    void video?.stop();
    return true;
  };

  return {
    push(frame) {
      const timeMs = timeOf(frame.timeMs);
      if (isEnded || timeMs === null || timeMs <= (lastMs ?? -1)) return;
      if (isFull(timeMs)) return;
      firstMs ??= timeMs;
      const isSameSize = frame.widthPx === start.widthPx && frame.heightPx === start.heightPx;
      const { widthPx, heightPx } = start;
      for (let atMs = (lastMs ?? timeMs) + noteEveryMs; atMs < timeMs; atMs += noteEveryMs)
        add({ timeMs: atMs, row: null, widthPx, heightPx });
      add({ ...frame, timeMs, row: isSameSize ? frame.row : null });
    },
    go() {
      const goMs = timeOf(adapters.clockMs());
      if (isEnded || goMs === null || start.setup.goMs !== undefined) return;
      start = { ...start, setup: { ...start.setup, goMs } };
      live?.go(goMs);
      void open?.go(goMs).catch(tell);
    },
    pause() {
      video?.pause();
      clock.pause();
    },
    resume() {
      video?.resume();
      clock.resume();
    },
    flush: async () => open?.flush().catch(tell),
    async finish(session) {
      await end();
      const { track, measurement } = await measured();
      if (lastMs === null) {
        await open?.drop().catch(() => undefined);
        return null;
      }
      const file = (await open?.endVideo().catch(() => null)) ?? null;
      const facts =
        file === null
          ? null
          : await inEndTime(loadVideoFacts(file, adapters.openFrameSource)).catch(() => null);
      const recording = buildSetRecording(start, track, facts, measurement);
      if (open === null) return { recording, isKept: false, isWaiting: false, problem };
      try {
        // A video that ended before the set does not show all that the joints do.
        const isWhole = facts !== null && lastMs - facts.durationMs < shortVideoMs;
        await open.finish(recording, isWhole ? 'waiting' : 'impossible', session());
        return { recording, isKept: repository.lasting.records, isWaiting: isWhole, problem };
      } catch (error) {
        tell(error);
        return { recording, isKept: false, isWaiting: false, problem };
      }
    },
    async discard() {
      await end();
      live?.close();
      // What is left of it is offered the next time, and can be dropped there.
      await open?.drop().catch(() => undefined);
    },
  };
}

/**
 * Time of a set, from its start, without the pauses: that of its video as long as there is one. Where the video ends by
 * itself, since the storage is full or the recorder has failed, the set goes on, and so does its time.
 */
function createSetClock(video: VideoRecording | null, clockMs: () => number) {
  /** The page's time at which the set's would have begun, without the pauses. */
  let startMs: number | null = video === null ? clockMs() : null;
  let pausedAtMs: number | null = null;
  return {
    pause: () => {
      pausedAtMs ??= clockMs();
    },
    resume() {
      if (pausedAtMs !== null && startMs !== null) startMs += clockMs() - pausedAtMs;
      pausedAtMs = null;
    },
    /** Null before the start, and in a pause. */
    timeMs(pageMs: number): number | null {
      const videoMs = video?.videoTimeMs(pageMs) ?? null;
      if (videoMs !== null) startMs = pageMs - videoMs;
      if (videoMs !== null || (video !== null && !video.isOver())) return videoMs;
      return startMs !== null && pausedAtMs === null && pageMs >= startMs ? pageMs - startMs : null;
    },
  };
}
