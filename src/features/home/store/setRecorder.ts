import { createGrowingTrack } from '#core/keypoints/createGrowingTrack';
import { RecordingProblem } from '#device/camera/recordingProblem';
import type { VideoRecording } from '#device/camera/recordVideo';
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
import type { HomeAdapters } from './homeAdapters';

export interface RecordedSet {
  recording: RecordingDocument;
  isKept: boolean;
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
}

/**
 * Begins to record a set. Whatever fails, the rest continues: without storage in memory, without a video with
 * the joints, without counting with what is measured afterwards.
 */
export async function startSetRecorder(parts: SetRecorderParts): Promise<SetRecorder> {
  const { adapters, repository, stream, onEvent } = parts;
  let { start } = parts;
  let problem: string | null = null;
  const tell = (error: unknown) => {
    problem = explainProblem(error, 'be kept').sentence;
    onEvent({ kind: 'problem', sentence: problem });
  };
  const joints = createGrowingTrack(start.widthPx, start.heightPx);
  let lastMs: number | null = null;
  const open = await repository.beginSet(start, tell).catch((error: unknown) => {
    tell(error);
    return null;
  });
  const video = recordTo(open);
  const clock = createOwnClock(adapters.clockMs);
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
  const timeOf = (pageMs: number) => (video === null ? clock.timeMs(pageMs) : video.videoTimeMs(pageMs));

  const measured = async () => {
    const finished = (await live?.finish().catch(() => undefined)) ?? null;
    live?.close();
    if (finished !== null) return finished;
    return { track: joints.copy(), measurement: undefined };
  };
  const end = async () => {
    isEnded = true;
    await video?.stop();
  };

  return {
    push(frame) {
      const timeMs = timeOf(frame.timeMs);
      if (isEnded || timeMs === null || timeMs <= (lastMs ?? -1)) return;
      const isSameSize = frame.widthPx === start.widthPx && frame.heightPx === start.heightPx;
      const row = isSameSize ? frame.row : null;
      joints.append(timeMs, row);
      lastMs = timeMs;
      open?.addRow({ timeMs, row });
      live?.push({ ...frame, timeMs });
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
        file === null ? null : await loadVideoFacts(file, adapters.openFrameSource).catch(() => null);
      const recording = buildSetRecording(start, track, facts, measurement);
      if (open === null) return { recording, isKept: false, problem };
      try {
        await open.finish(recording, facts === null ? 'impossible' : 'waiting', session());
        return { recording, isKept: repository.lasting.records, problem };
      } catch (error) {
        tell(error);
        return { recording, isKept: false, problem };
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

/** Time of a set without a video: from its start, without the pauses. */
function createOwnClock(clockMs: () => number) {
  const startMs = clockMs();
  let pausedMs = 0;
  let pausedAtMs: number | null = null;
  return {
    pause: () => {
      pausedAtMs ??= clockMs();
    },
    resume() {
      if (pausedAtMs !== null) pausedMs += clockMs() - pausedAtMs;
      pausedAtMs = null;
    },
    timeMs: (pageMs: number) =>
      pausedAtMs === null && pageMs >= startMs ? pageMs - startMs - pausedMs : null,
  };
}
