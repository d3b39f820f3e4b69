import type { recordVideo, VideoRecording } from '#device/camera/recordVideo';
import { videoName } from '#device/storage/videos';
import { explainProblem } from '#shell/explainProblem';

export interface RecorderAdapters {
  recordVideo: typeof recordVideo;
  /** @throws RecordingProblem */
  pickRecordingType: () => string;
  /** Hands a file to the person. */
  saveBlob: (fileName: string, blob: Blob) => void;
  now: () => Date;
}

export type MirrorRecording =
  | { state: 'off' }
  | { state: 'running'; fromMs: number }
  /** Only in memory. */
  | { state: 'done'; file: File; lastedMs: number; problem: string | null }
  | { state: 'failed'; sentence: string };

/** A recording lies in the page's memory: ten minutes at the usual rate are 225 MB. */
const largestBytes = 250_000_000;
const fullSentence = 'The recording has stopped: the page’s memory is full.';

/** Records practice into memory, one recording at a time; reports its state. Never throws or rejects. */
export function createMirrorRecorder(adapters: RecorderAdapters, tell: (now: MirrorRecording) => void) {
  let running: VideoRecording | null = null;
  const fail = (error: unknown) =>
    tell({ state: 'failed', sentence: explainProblem(error, 'record').sentence });

  return {
    start(stream: MediaStream): void {
      if (running !== null) return;
      const from = adapters.now();
      const chunks: Blob[] = [];
      let bytes = 0;
      try {
        const mimeType = adapters.pickRecordingType();
        const sink = {
          write(chunk: Blob) {
            chunks.push(chunk);
            bytes += chunk.size;
            if (bytes > largestBytes) void running?.stop();
            return Promise.resolve();
          },
        };
        running = adapters.recordVideo(stream, sink, { mimeType });
        tell({ state: 'running', fromMs: from.getTime() });
        void running.ended.then(({ problem }) => {
          running = null;
          if (bytes === 0) return problem === null ? tell({ state: 'off' }) : fail(problem);
          const isFull = bytes > largestBytes;
          tell({
            state: 'done',
            file: new File(chunks, videoName(`practice-${minuteOf(from)}`, mimeType), {
              type: mimeType.split(';')[0]!,
            }),
            lastedMs: adapters.now().getTime() - from.getTime(),
            problem: problem?.message ?? (isFull ? fullSentence : null),
          });
        });
      } catch (error) {
        running = null;
        fail(error);
      }
    },
    stop(): void {
      void running?.stop();
    },
  };
}

/** For a file's name, universal time: 2026-03-02-1000. */
function minuteOf(date: Date): string {
  return date.toISOString().slice(0, 16).replace('T', '-').replace(':', '');
}
