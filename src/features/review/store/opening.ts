import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import type { TimedSetup } from '#core/measurement/measureSet';
import { readRecordingAside } from '#device/reading/readRecordingAside';
import { parseRecording } from '#documents/recording/parseRecording';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { recordingHead } from '#documents/recording/recordingHead';
import { emptyReview } from '#documents/recording/reviewSchema';
import { explainProblem, type Doing } from '#shell/explainProblem';
import { recordingRecording, seenCloser, type ShownRecording } from '#shell/tracking/shownRecording';
import { isoDay } from '#words/dateWords';
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
  closerLook,
}: ReviewParts): Pick<
  Review,
  | 'openExample'
  | 'openFile'
  | 'openFiles'
  | 'openNext'
  | 'forgetWaiting'
  | 'openKept'
  | 'stopCloserLook'
  | 'attachVideo'
  | 'readBeside'
  | 'startTracking'
  | 'trackAgain'
> {
  let chosenFile: File | null = null;
  let job = new AbortController();
  let look = new AbortController();

  // What nobody sees any more need not be looked at.
  adapters.navigation.store.subscribe(({ screen }) => {
    if (screen !== 'review') look.abort();
  });

  /** Starts a job, which ends every other one; what it throws becomes a problem, unless it was cancelled. */
  const run = async (doing: Doing, work: (signal: AbortSignal) => Promise<void>) => {
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
      keptFor: null,
      filmedOn: isoDay(document.createdAt),
      session: kept?.session ?? null,
    });
  };

  const track = (
    video: File,
    setup: TimedSetup,
    told: Pick<ShownRecording, 'origin' | 'note'>,
    edits = startEdits(),
  ) =>
    run('track', async (signal) => {
      const corrections = correctionsOf(edits);
      const tracked = await adapters.tracking.trackFile(video, setup, { ...told, corrections, signal });
      if (tracked === null || signal.aborted) return;
      keeper.beginMeasured();
      const { undone } = edits;
      showing.show(tracked, {
        edits: { ...startEdits(corrections), undone },
        entries: emptyReview,
        keptFor: null,
        filmedOn: isoDay(new Date(video.lastModified).toISOString()),
        session: null,
      });
      if (tracked.observed.closer === undefined) closerLook.current = lookCloser(tracked, signal);
    });

  /** Looks more closely at what is shown; its repetitions become firm one after the other. */
  const lookCloser = async (usual: ShownRecording, job: AbortSignal) => {
    const mine = (look = new AbortController());
    const { signal } = mine;
    job.addEventListener('abort', () => mine.abort());
    const firm = (seen: KeypointTrack) => {
      const { recording, edits } = get();
      if (recording === null || signal.aborted) return;
      showing.replace(seenCloser(recording, seen, correctionsOf(edits)));
    };
    try {
      const seen = await adapters.tracking.lookCloser(usual, { signal, onSeen: firm });
      if (seen !== null) firm(seen);
    } catch (error) {
      if (!signal.aborted) set({ problem: explainProblem(error, 'look-closer') });
    }
  };

  const openFile: Review['openFile'] = (file) =>
    run('open', async (signal) => {
      set({ opening: 'file' });
      if (isRecordingFile(file)) {
        const document = await readRecordingAside(await file.text());
        signal.throwIfAborted();
        if (!(await mayReplace())) return;
        openRecording(document, { origin: 'session', fileName: file.name, video: null });
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
    });
  /** Whether what was measured here, and is saved nowhere, may give way to another recording. */
  const mayReplace = async () =>
    get().keeping.state !== 'measured' ||
    adapters.navigation.ask({
      title: 'Give up the measured recording?',
      sentence:
        'What was measured last is not kept. Go back to the result to keep it for a patient or to save it as a file.',
      leave: 'Give it up',
    });

  return {
    openExample: () =>
      run('open', async (signal) => {
        if (!(await mayReplace())) return;
        set({ opening: 'example' });
        const { recordingText, video } = await adapters.fetchExample();
        signal.throwIfAborted();
        openRecording(parseRecording(recordingText), { origin: 'example', fileName: video.name, video });
      }),
    openFile,
    openFiles([first, ...waiting]) {
      set({ waiting });
      return first === undefined ? Promise.resolve() : openFile(first);
    },
    openNext() {
      const [next, ...waiting] = get().waiting;
      set({ waiting });
      return next === undefined ? Promise.resolve() : openFile(next);
    },
    forgetWaiting: () => set({ waiting: [] }),
    stopCloserLook: () => look.abort(),
    openKept(recordingDocument, fileName, video, kept) {
      const open = () => {
        job.abort();
        openRecording(recordingDocument, { origin: 'session', fileName, video }, kept);
        set({ opening: null, problem: null });
      };
      if (get().keeping.state !== 'measured') return open();
      void mayReplace().then((isLeft) => (isLeft ? open() : undefined));
    },
    attachVideo: (file) =>
      run('attach', async (signal) => {
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
      if (chosenFile === null || side === null || !(await mayReplace())) return;
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
