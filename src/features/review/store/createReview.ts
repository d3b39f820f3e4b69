import { createStore, type StoreApi } from 'zustand/vanilla';
import { startCorrections } from '#core/correction/correctionHistory';
import type { TaskId } from '#core/exercises/exercises';
import type { TimedSetup } from '#core/measurement/measureSet';
import type { Limits } from '#core/protocol/limits';
import type { Side } from '#core/protocol/side';
import { framesCsv } from '#documents/csv/framesCsv';
import { repetitionsCsv } from '#documents/csv/repetitionsCsv';
import { buildRecording } from '#documents/recording/buildRecording';
import { parseRecording } from '#documents/recording/parseRecording';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { recordingHead } from '#documents/recording/recordingHead';
import { emptyReview } from '#documents/recording/reviewSchema';
import { explainProblem } from '#shell/explainProblem';
import {
  judgeAll,
  measuredAgain,
  recordingRecording,
  type ShownRecording,
} from '#shell/tracking/shownRecording';
import { checkSameVideo } from './checkSameVideo';
import type { KeptReview } from './keptReview';
import { endMove, moveLimits, startLimits, type LimitHistory } from './limitHistory';
import { createReviewActions, type ReviewActions } from './reviewActions';
import type { ReviewAdapters } from './reviewAdapters';
import { createReviewKeeper } from './reviewKeeper';
import { initialReviewState, type ReviewState } from './reviewState';
import { sameRepetition } from './sameRepetition';
import { tellingRepetition } from './tellingRepetition';

/** Larger than the document of any recording within bounds, bytes. */
const largestRecordingBytes = 300_000_000;

/** All actions of the app, on one store. */
export interface Review extends ReviewActions {
  readonly store: StoreApi<ReviewState>;
  setTask(task: TaskId): void;
  setSide(side: Side): void;
  /** Undefined where it is not known. */
  setBodyHeight(bodyHeightCm: number | undefined): void;
  openExample(): Promise<void>;
  /** Takes a video to be measured, or a recording document, which opens at once. */
  openFile(file: File): Promise<void>;
  /**
   * Shows a recording that is kept on this device, with its video where there is one; leaving the review goes
   * back to where it was opened.
   *
   * @throws Error  where it can't be measured
   */
  openKept(
    recordingDocument: RecordingDocument,
    fileName: string,
    video: File | null,
    kept?: KeptReview,
  ): void;
  attachVideo(file: File): Promise<void>;
  /**
   * Reads another kept recording of the same patient, to be viewed next to the shown one.
   *
   * @throws Error  with a sentence that can be shown
   */
  readBeside(recordingId: string): Promise<ShownRecording>;
  /** Tracks the chosen video and measures it. */
  startTracking(): Promise<void>;
  /** Tracks the shown recording's video again on this device. */
  trackAgain(): Promise<void>;
  moveLimits(next: Limits): void;
  endLimitMove(): void;
  /** Sets both limits at once. */
  putLimits(limits: Limits): void;
  select(index: number): void;
  saveRecording(): void;
  /** Saves the shown recording as CSV, one row per repetition or per frame. */
  saveTable(rows: 'repetitions' | 'frames'): void;
  dismissProblem(): void;
}

export function createReview(adapters: ReviewAdapters): Review {
  const store = createStore<ReviewState>(() => ({
    ...initialReviewState,
    reviewer: adapters.reviewer.read(),
  }));
  const { getState: get, setState: set } = store;
  const { navigation } = adapters;
  let chosenFile: File | null = null;
  let job = new AbortController();
  const reviewKeeper = createReviewKeeper(get, set, adapters.later);

  // A problem on one screen does not concern the next.
  navigation.store.subscribe(({ screen }, before) => {
    if (screen !== before.screen) set({ problem: null });
  });

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

  const showRecording = (next: ShownRecording, part: Partial<ReviewState>) => {
    const { setup } = next.measurement;
    const limits = part.limits ?? get().limits;
    const judgements = judgeAll(next.measurement, limits.present);
    set({
      recording: next,
      setup,
      judgements,
      changedVerdicts: null,
      selected: tellingRepetition(judgements, limits.present),
      ...part,
    });
    void navigation.show('review', true);
  };

  /** Measures what is shown again: for another task or with other corrections. */
  const measureAgain = (setup = get().recording?.setup) => {
    const { recording, corrections, selected } = get();
    if (recording === null || setup === undefined || navigation.screen() !== 'review') return;
    const again = measuredAgain(recording, setup, corrections.done);
    const selectedAgain = sameRepetition(recording.measurement, again.measurement, selected);
    showRecording(again, selectedAgain === null ? {} : { selected: selectedAgain });
  };

  const fresh = { entries: emptyReview, session: null };

  /** Judges again; changed verdicts are counted against the limits before the move. */
  const setLimits = (limits: LimitHistory, before: Limits) => {
    const { recording } = get();
    if (recording === null) return set({ limits });
    const { measurement } = recording;
    const judgements = judgeAll(measurement, limits.present);
    const earlier = judgeAll(measurement, before);
    const changed = judgements.filter(({ verdict }, index) => verdict !== earlier[index]?.verdict);
    set({ limits, judgements, changedVerdicts: changed.length });
  };

  const track = (
    video: File,
    setup: TimedSetup,
    told: Pick<ShownRecording, 'origin' | 'note'>,
    corrections = startCorrections(),
  ) =>
    run('be tracked', async (signal) => {
      const { done } = corrections;
      const tracked = await adapters.tracking.trackFile(video, setup, { ...told, corrections: done, signal });
      if (tracked === null || signal.aborted) return;
      reviewKeeper.begin(null, null);
      showRecording(tracked, {
        ...fresh,
        corrections,
        undoable: done.map(() => 'correction'),
        limits: startLimits(get().limits.present),
      });
    });

  const openRecording = (
    document: RecordingDocument,
    parts: Parameters<typeof recordingRecording>[1],
    kept: KeptReview | null = null,
  ) => {
    const { limits, corrections = [], review = emptyReview } = document;
    const opened = recordingRecording(document, parts);
    reviewKeeper.begin(kept, recordingHead(document));
    showRecording(opened, {
      limits: startLimits(limits),
      corrections: startCorrections(corrections),
      undoable: corrections.map(() => 'correction'),
      entries: review,
      session: kept?.session ?? null,
    });
  };

  /** Ends a move of a limit, and notes who set it and when. */
  const settleLimits = () => {
    const { recording, limits, entries, undoable, reviewer } = get();
    const ended = endMove(limits);
    set({ limits: ended });
    if (recording === null || ended.past.length === limits.past.length) return;
    const entry = { limits: ended.present, by: reviewer, at: adapters.now().toISOString() };
    set({
      undoable: [...undoable, 'limits'],
      entries: { ...entries, limitsSet: [...entries.limitsSet, entry] },
    });
    reviewKeeper.changed();
  };

  /** Before there is a recording, what the next one is measured as; in its review, what it is. */
  const changeSetup = (part: Partial<Pick<TimedSetup, 'task' | 'bodyHeightCm'>>) => {
    const { recording } = get();
    set({ setup: { ...get().setup, ...part } });
    if (recording === null || navigation.screen() !== 'review') return;
    measureAgain({ ...recording.setup, ...part });
    reviewKeeper.changed();
  };

  const reviewActions = createReviewActions({
    ...{ get, set, setLimits, now: adapters.now, writeReviewer: adapters.reviewer.write },
    measureAgain: () => measureAgain(),
    changed: reviewKeeper.changed,
  });

  return {
    store,
    ...reviewActions,
    setTask: (task) => changeSetup({ task }),
    setSide(side) {
      const { recording } = get();
      if (recording !== null && navigation.screen() === 'review') {
        if (recording.measurement.setup.side !== side) reviewActions.correct({ kind: 'working-side', side });
      } else set({ setup: { ...get().setup, side } });
    },
    setBodyHeight: (bodyHeightCm) => changeSetup({ bodyHeightCm }),
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
      const kept = reviewKeeper.kept();
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
      const { recording } = get();
      if (recording === null || recording.video === null) return;
      const { video, setup, origin, note } = recording;
      await track(video, setup, { origin, note }, get().corrections);
    },
    moveLimits(next) {
      const moved = moveLimits(get().limits, next);
      setLimits(moved, moved.movingFrom ?? moved.present);
    },
    endLimitMove: settleLimits,
    putLimits(next) {
      const { limits } = get();
      setLimits(moveLimits(limits, next), limits.present);
      settleLimits();
    },
    select: (selected) => set({ selected }),
    saveRecording() {
      const { recording } = get();
      if (recording === null) return;
      const { videoFacts: video, model, note, observed, measurement, setup, excluded } = recording;
      const createdAt = adapters.now();
      const { limits, corrections, entries } = get();
      const document = buildRecording({
        ...{ createdAt, note, video, model, measurement, setup, excluded },
        id: adapters.newId(),
        limits: limits.present,
        track: observed,
        corrections: corrections.done,
        review: isBlank(entries) ? undefined : entries,
      });
      adapters.saveFile(`overfoot-session-${dayOf(createdAt)}.json`, JSON.stringify(document));
      if (get().keeping.state === 'unsaved') set({ keeping: { state: 'not-kept' } });
    },
    saveTable(rows) {
      const { recording } = get();
      if (recording === null) return;
      const limits = get().limits.present;
      const text =
        rows === 'frames'
          ? framesCsv({ ...recording, track: recording.observed })
          : repetitionsCsv({ ...recording, limits });
      adapters.saveFile(`overfoot-${rows}-${dayOf(adapters.now())}.csv`, text);
    },
    dismissProblem: () => set({ problem: null }),
  };
}

function isBlank({ limitsSet, remarks, cues, reviewed }: ReviewState['entries']): boolean {
  return limitsSet.length + remarks.length + cues.length === 0 && reviewed === null;
}

/** For a file's name, which holds nothing else that could identify the patient. */
function dayOf(date: Date): string {
  return date.toISOString().slice(0, 10);
}

function isRecordingFile(file: File): boolean {
  const named = file.type === 'application/json' || file.name.toLowerCase().endsWith('.json');
  return named && file.size <= largestRecordingBytes;
}
