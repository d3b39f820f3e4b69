import type { TimedSetup } from '#core/measurement/measureSet';
import { parseRecording } from '#documents/recording/parseRecording';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { recordingHead } from '#documents/recording/recordingHead';
import { emptyReview } from '#documents/recording/reviewSchema';
import { explainProblem } from '#shell/explainProblem';
import { recordingRecording, type ShownRecording } from '#shell/tracking/shownRecording';
import { checkSameVideo } from './checkSameVideo';
import type { KeptReview } from './keptReview';
import type { Review } from './review';
import { correctionsOf, startEdits } from './reviewEdits';
import type { ReviewParts } from './reviewParts';

/** Larger than the document of any recording within bounds, bytes. */
const largestRecordingBytes = 300_000_000;

/** Where a recording to review comes from: the example, a file, this device, or a video that is tracked. */
export function opening({
  adapters,
  get,
  set,
  keeper,
  showing,
}: ReviewParts): Pick<
  Review,
  'openExample' | 'openFile' | 'openKept' | 'attachVideo' | 'readBeside' | 'startTracking' | 'trackAgain'
> {
  let chosenFile: File | null = null;
  let job = new AbortController();

  /** Starts a job, which ends every other one; what it throws becomes a problem, unless it was cancelled. */
  const run = async (doing: string, work: (signal: AbortSignal) => Promise<void>) => {
    job.abort();
    const { signal } = (job = new AbortController());
    set({ problem: null });
    try {
      await work(signal);
    } catch (error) {
      if (!signal.aborted) set({ problem: explainProblem(error, doing) });
    } finally {
      if (!signal.aborted) set({ opening: null });
    }
  };

  const openRecording = (
    document: RecordingDocument,
    parts: Parameters<typeof recordingRecording>[1],
    kept: KeptReview | null = null,
  ) => {
    const { limits, corrections, review: entries = emptyReview } = document;
    const opened = recordingRecording(document, parts);
    keeper.begin(kept, recordingHead(document));
    showing.show(opened, {
      limits,
      edits: startEdits(corrections),
      entries,
      session: kept?.session ?? null,
    });
  };

  const track = (
    video: File,
    setup: TimedSetup,
    told: Pick<ShownRecording, 'origin' | 'note'>,
    edits = startEdits(),
  ) =>
    run('be tracked', async (signal) => {
      const corrections = correctionsOf(edits);
      const tracked = await adapters.tracking.trackFile(video, setup, { ...told, corrections, signal });
      if (tracked === null || signal.aborted) return;
      keeper.begin(null, null);
      const { undone } = edits;
      showing.show(tracked, {
        edits: { ...startEdits(corrections), undone },
        entries: emptyReview,
        session: null,
      });
    });

  return {
    openExample: () =>
      run('be opened', async (signal) => {
        set({ opening: 'example' });
        const { recordingText, video } = await adapters.fetchExample();
        signal.throwIfAborted();
        openRecording(parseRecording(recordingText), { origin: 'example', fileName: video.name, video });
      }),
    openFile: (file) =>
      run('be opened', async (signal) => {
        set({ opening: 'file' });
        if (isRecordingFile(file)) {
          const text = await file.text();
          signal.throwIfAborted();
          openRecording(parseRecording(text), { origin: 'session', fileName: file.name, video: null });
          return;
        }
        chosenFile = null;
        // What was known of another recording's bends and start does not hold for this one.
        const { task, side, bodyHeightCm } = get().setup;
        set({ chosen: null, setup: { task, side, bodyHeightCm } });
        const source = await adapters.openFrameSource(file);
        source.close();
        signal.throwIfAborted();
        chosenFile = file;
        set({ chosen: source.facts });
      }),
    openKept(recordingDocument, fileName, video, kept) {
      job.abort();
      openRecording(recordingDocument, { origin: 'session', fileName, video }, kept);
      set({ opening: null, problem: null });
    },
    attachVideo: (file) =>
      run('be attached', async (signal) => {
        set({ opening: 'file' });
        const source = await adapters.openFrameSource(file);
        source.close();
        signal.throwIfAborted();
        const { recording } = get();
        if (recording === null) return;
        checkSameVideo(source.facts, recording.videoFacts);
        set({ recording: { ...recording, video: file } });
      }),
    async readBeside(recordingId) {
      const kept = keeper.kept();
      if (kept === null)
        throw new Error('The recordings of this patient are no longer at hand. Open one again.');
      const { recording: recordingDocument, video } = await kept.readOther(recordingId);
      return recordingRecording(recordingDocument, { origin: 'session', fileName: '', video });
    },
    async startTracking() {
      const { side, ...setup } = get().setup;
      if (chosenFile === null || side === null) return;
      await track(chosenFile, { ...setup, side }, { origin: 'video', note: '' });
    },
    async trackAgain() {
      const { recording, edits } = get();
      if (recording === null || recording.video === null) return;
      const { video, setup, origin, note } = recording;
      await track(video, setup, { origin, note }, edits);
    },
  };
}

function isRecordingFile(file: File): boolean {
  const named = file.type === 'application/json' || file.name.toLowerCase().endsWith('.json');
  return named && file.size <= largestRecordingBytes;
}
