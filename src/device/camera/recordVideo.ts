import { createQueue } from '#core/createQueue';
import { RecordingProblem } from './recordingProblem';

/** Where the pieces of a recording go, in order; a VideoWriter from storage fits. */
export interface ChunkSink {
  /** Resolves once the piece is safe. */
  write(chunk: Blob): Promise<void>;
}

export interface RecordingEnd {
  /** Bytes that reached the sink. */
  bytes: number;
  /** Why it ended before it was stopped; null where it did not. */
  problem: RecordingProblem | null;
}

/** A recording in progress. */
export interface VideoRecording {
  /** Stops recording pictures; those recorded so far are passed on. The pause is not in the video. */
  pause(): void;
  resume(): void;
  /** Ends it; resolves like `ended`. A second call does nothing more. */
  stop(): Promise<RecordingEnd>;
  /** Resolves once the last piece is in the sink, whatever ended it; never rejects. */
  readonly ended: Promise<RecordingEnd>;
  /** Whether it has ended, by itself or not. */
  isOver(): boolean;
  /**
   * Time in the video of a moment on the page's clock, to within a frame or two; the file has the exact
   * times.
   *
   * @param pageMs  performance.now() of the moment
   * @returns ms from the start of the video; null before it, and in a pause
   */
  videoTimeMs(pageMs: number): number | null;
}

export interface RecordingOptions {
  /** See pickRecordingType. */
  mimeType: string;
  /** How often a piece is passed on, ms; up to 1000. */
  timesliceMs?: number;
  bitsPerSecond?: number;
  /** Called at once when it ends by itself. */
  onProblem?: (problem: RecordingProblem) => void;
  /** The browser's own, or a test double. */
  createRecorder?: (stream: MediaStream, options: MediaRecorderOptions) => MediaRecorder;
}

/** Half a second: with what the browser and the disk take, well below the two seconds that may be lost. */
const defaultTimesliceMs = 500;
/**
 * A key picture every second: seeking is quick, and pieces of an MP4 come as often. Not in the DOM types yet;
 * a browser that does not know it ignores it.
 */
const keyPictureEveryMs = 1000;
/** Enough for 720p of a person in a room to stay sharp, and 45 MB for two minutes. */
const defaultBitsPerSecond = 3_000_000;
/** Room that a video takes, bytes per second. */
export const videoBytesPerS = defaultBitsPerSecond / 8;

/**
 * Records a camera's pictures and passes them on piece by piece. Pictures only: sound is of no use here, and
 * private.
 *
 * @throws RecordingProblem  'no-recorder', 'camera-ended' where the camera delivers no pictures
 */
export function recordVideo(
  stream: MediaStream,
  sink: ChunkSink,
  {
    mimeType,
    timesliceMs = defaultTimesliceMs,
    bitsPerSecond = defaultBitsPerSecond,
    onProblem,
    createRecorder = (stream, options) => new MediaRecorder(stream, options),
  }: RecordingOptions,
): VideoRecording {
  if (!(timesliceMs > 0 && timesliceMs <= 1000)) {
    throw new RangeError(`Pieces must come at least every 1000 ms, not every ${timesliceMs} ms.`);
  }
  const [track] = stream.getVideoTracks();
  if (track === undefined || track.readyState === 'ended') throw new RecordingProblem('camera-ended');
  const recorder = startRecorder();
  const clock = createRecordingClock();
  let problem: RecordingProblem | null = null;
  let bytes = 0;
  const writes = createQueue();

  function startRecorder(): MediaRecorder {
    try {
      return createRecorder(new MediaStream([track!]), {
        mimeType,
        videoBitsPerSecond: bitsPerSecond,
        videoKeyFrameIntervalDuration: keyPictureEveryMs,
      } as MediaRecorderOptions);
    } catch (error) {
      throw new RecordingProblem('no-recorder', error);
    }
  }
  const stopNow = () => {
    if (recorder.state !== 'inactive') recorder.stop();
  };
  const fail = (reason: RecordingProblem) => {
    if (problem !== null) return;
    problem = reason;
    onProblem?.(reason);
    stopNow();
  };
  const writeNext = async (chunk: Blob) => {
    // After a piece that could not be written, no later one can be read.
    if (problem?.kind === 'not-kept') return;
    try {
      await sink.write(chunk);
      bytes += chunk.size;
    } catch (error) {
      fail(new RecordingProblem('not-kept', error));
    }
  };
  const onCameraEnd = () => fail(new RecordingProblem('camera-ended'));

  recorder.ondataavailable = ({ data }) => {
    if (data.size > 0) void writes.add(() => writeNext(data));
  };
  recorder.onstart = () => clock.start(performance.now());
  recorder.onerror = (event) => fail(new RecordingProblem('recorder-failed', (event as ErrorEvent).error));
  track.addEventListener('ended', onCameraEnd, { once: true });
  const ended = new Promise<void>((resolve) => (recorder.onstop = () => resolve())).then(async () => {
    track.removeEventListener('ended', onCameraEnd);
    clock.pause(performance.now());
    await writes.idle();
    // A recorder also stops by itself, without an error, when its track ends.
    if (!isStopping)
      fail(new RecordingProblem(track.readyState === 'ended' ? 'camera-ended' : 'recorder-failed'));
    return { bytes, problem };
  });
  let isStopping = false;
  try {
    recorder.start(timesliceMs);
  } catch (error) {
    track.removeEventListener('ended', onCameraEnd);
    throw new RecordingProblem('no-recorder', error);
  }

  return {
    pause() {
      if (recorder.state !== 'recording') return;
      recorder.requestData();
      recorder.pause();
      clock.pause(performance.now());
    },
    resume() {
      if (recorder.state !== 'paused') return;
      recorder.resume();
      clock.start(performance.now());
    },
    stop() {
      isStopping = true;
      stopNow();
      return ended;
    },
    ended,
    isOver: () => recorder.state === 'inactive',
    videoTimeMs: (pageMs) => clock.timeAt(pageMs),
  };
}

/** Time in the recording, from the moments on the page's clock at which it starts and pauses. */
function createRecordingClock() {
  const runs: { fromMs: number; toMs: number; before: number }[] = [];
  return {
    start(nowMs: number) {
      const last = runs.at(-1);
      if (last?.toMs === Infinity) return;
      const before = last === undefined ? 0 : last.before + last.toMs - last.fromMs;
      runs.push({ fromMs: nowMs, toMs: Infinity, before });
    },
    pause(nowMs: number) {
      const last = runs.at(-1);
      if (last !== undefined) last.toMs = Math.min(last.toMs, nowMs);
    },
    timeAt(nowMs: number): number | null {
      const run = runs.find(({ fromMs, toMs }) => nowMs >= fromMs && nowMs < toMs);
      return run === undefined ? null : run.before + nowMs - run.fromMs;
    },
  };
}
