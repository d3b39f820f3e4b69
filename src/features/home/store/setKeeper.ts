import type { LiveSetEvent } from '#device/live/createLiveSet';
import type { LiveFrame } from '#device/live/liveFrame';
import { setSummary } from '../guide/setSummary';
import type { SetResult } from '../guide/guideState';
import type { SetStep } from '#documents/plan/planSteps';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import type { SessionDocument } from '#documents/session/sessionDocument';
import type { SetStart } from '#device/storage/keptSchemas';
import type { Repository } from '#device/storage/repository';
import { explainProblem } from '#shell/explainProblem';
import type { Bends } from './createBendsReader';
import type { ShownRecording } from '#shell/tracking/shownRecording';
import type { HomeAdapters } from './homeAdapters';
import type { HomeCamera } from './homeCamera';
import type { HomeSet, HomeState } from './homeState';
import { keepOwnVideo } from './keepOwnVideo';
import { setStart } from './setStart';
import { startSetRecorder, type SetRecorder } from './setRecorder';

export interface PictureSize {
  widthPx: number;
  heightPx: number;
}

/** Records the sets that the guide wants recorded, and turns each into a session. */
export interface SetKeeper {
  /** @param bends  resolves once they are read; null where there are none */
  start(
    step: SetStep,
    bends: Promise<Bends | null>,
    size: PictureSize,
    onEvent: (event: LiveSetEvent) => void,
  ): void;
  push(frame: LiveFrame): void;
  /** The person was told to begin: what the recording holds from before is no repetition of the set. */
  go(): void;
  pause(): void;
  resume(): void;
  /** Brings to storage what waits for it. */
  flush(): void;
  discard(): void;
  /** Ends the recording, which belongs to the set with this index. */
  stop(index: number): void;
  /** Keeps a set that was filmed with another camera and measured from its video. */
  keepVideo(stepIndex: number, recording: ShownRecording, file: File): void;
  /** Takes in what was done so far; the sets in the state follow. */
  takeResults(results: readonly SetResult[]): void;
  /** Resolves once nothing is being kept any more. */
  settled(): Promise<void>;
  /** The session of a set, from this visit; null where there is none. */
  recording(index: number): RecordingDocument | null;
  /** Puts a session that was measured anew or reviewed in the place of the one with its id. */
  replace(recordingDocument: RecordingDocument, isFromVideo: boolean): void;
  forget(): void;
}

interface KeeperParts {
  adapters: HomeAdapters;
  get: () => HomeState;
  set: (change: Partial<HomeState>) => void;
  repository: Promise<Repository>;
  camera: Pick<HomeCamera, 'stream' | 'model'>;
  /** The visit as it stands; its end is not reached yet. */
  session: () => SessionDocument;
  onCountingFailed: () => void;
}

interface Running {
  id: string;
  isOver: boolean;
  recorder: SetRecorder | null;
  begun: Promise<SetRecorder | null>;
}

export function createSetKeeper(parts: KeeperParts): SetKeeper {
  const { adapters, get, set, repository, camera, session } = parts;
  const recordings = new Map<string, RecordingDocument>();
  let running: Running | null = null;
  let underWay: Promise<unknown> = Promise.resolve();

  const change = (index: number, changed: Partial<HomeSet>) =>
    set({ sets: get().sets.map((earlier, at) => (at === index ? { ...earlier, ...changed } : earlier)) });
  const queue = (work: () => Promise<void>) => {
    underWay = underWay.then(work).catch((error: unknown) => {
      set({ problem: explainProblem(error, 'be kept') });
    });
  };

  const begin = async (
    mine: Running,
    asked: SetStart,
    bends: Promise<Bends | null>,
    stream: MediaStream,
    onEvent: (event: LiveSetEvent) => void,
  ) => {
    const kept = await repository;
    const known = await bends;
    const setup = { ...asked.setup, ...(known === null ? {} : { bends: known }) };
    // A set that is interrupted finds its visit; where it can't be kept, the set itself says why.
    await kept.sessions.save(session()).catch(() => undefined);
    const { pace } = get();
    mine.recorder = await startSetRecorder({
      adapters,
      repository: kept,
      stream,
      start: { ...asked, setup },
      isCounting: pace.state === 'known' && pace.hasFeedback,
      onEvent: (event) => {
        if (!mine.isOver) onEvent(event);
      },
      onProblem: (sentence) => set({ problem: { title: 'Not everything can be kept', sentence } }),
      onCountingFailed: parts.onCountingFailed,
    });
    return mine.recorder;
  };
  const tell = (index: number, recordingDocument: RecordingDocument, isFromVideo: boolean) => {
    recordings.set(recordingDocument.id, recordingDocument);
    const complete = recordingDocument.derived.repetitions.filter(
      ({ completeness, excluded }) => completeness === 'complete' && excluded === undefined,
    );
    const judgements = complete.map(({ judgement }) => judgement);
    const prescribed = get().sets[index]?.result.prescribed ?? null;
    const summary = setSummary(judgements, prescribed);
    change(index, { found: judgements.length, judgements, summary, isFromVideo });
  };
  const end = (): Running | null => {
    const ended = running;
    running = null;
    if (ended !== null) ended.isOver = true;
    return ended;
  };

  return {
    start(step, bends, { widthPx, heightPx }, onEvent) {
      const { item } = step;
      const stream = camera.stream();
      const model = camera.model();
      if (item.kind === 'hold' || stream === null || model === null) return;
      const id = adapters.newId();
      const start = setStart(step, item, {
        id,
        startedAt: adapters.now().toISOString(),
        visitId: session().id,
        widthPx,
        heightPx,
        model,
        videoType: recordingType(adapters),
      });
      const mine: Running = { id, isOver: false, recorder: null, begun: Promise.resolve(null) };
      running = mine;
      mine.begun = begin(mine, start, bends, stream, onEvent).catch((error: unknown) => {
        set({ problem: explainProblem(error, 'be recorded') });
        return null;
      });
    },
    push: (frame) => running?.recorder?.push(frame),
    go: () => void running?.begun.then((recorder) => recorder?.go()),
    pause: () => void running?.begun.then((recorder) => recorder?.pause()),
    resume: () => void running?.begun.then((recorder) => recorder?.resume()),
    flush: () => void running?.begun.then((recorder) => recorder?.flush()),
    discard() {
      const ended = end();
      if (ended !== null) queue(async () => (await ended.begun)?.discard());
    },
    stop(index) {
      const ended = end();
      if (ended === null) return;
      change(index, { recordingId: ended.id, keeping: 'finishing' });
      queue(async () => {
        const recorded = (await (await ended.begun)?.finish(session)) ?? null;
        if (recorded === null) return change(index, { recordingId: null, keeping: 'none' });
        const { recording: recordingDocument, isKept, problem } = recorded;
        change(index, { keeping: isKept ? 'kept' : 'memory', problem });
        tell(index, recordingDocument, false);
      });
    },
    keepVideo(stepIndex, recording, file) {
      const { steps, sets } = get();
      const step = steps[stepIndex];
      if (step === undefined || step.item.kind === 'hold') return;
      const { item, itemIndex, side, number } = step;
      const id = adapters.newId();
      const result: SetResult = {
        stepIndex,
        itemIndex,
        task: item.task,
        side,
        number,
        prescribed: item.repetitions,
        counted: null,
        heldMs: null,
        cutShort: null,
        isRecorded: true,
      };
      const index = sets.length;
      set({ sets: [...sets, { ...emptySet, item, result, recordingId: id, keeping: 'finishing' }] });
      const { widthPx, heightPx } = recording.videoFacts;
      const start = setStart(step, item, {
        id,
        startedAt: adapters.now().toISOString(),
        visitId: session().id,
        widthPx,
        heightPx,
        model: recording.model,
        videoType: /webm|matroska/.test(file.type) || file.name.endsWith('.mkv') ? 'video/webm' : 'video/mp4',
      });
      queue(async () => {
        const kept = await keepOwnVideo(start, recording, file, await repository, session);
        change(index, { keeping: kept.isKept ? 'kept' : 'memory', problem: kept.problem });
        tell(index, kept.recording, true);
      });
    },
    takeResults(results) {
      const { sets, steps } = get();
      if (results.length === sets.length) return;
      const added = results.slice(sets.length).map((result): HomeSet => {
        const { item } = steps[result.stepIndex]!;
        return { ...emptySet, result, item };
      });
      set({ sets: [...sets, ...added] });
      queue(async () => (await repository).sessions.save(session()));
    },
    async settled() {
      let seen;
      do {
        seen = underWay;
        await seen;
      } while (seen !== underWay);
    },
    recording: (index) => recordings.get(get().sets[index]?.recordingId ?? '') ?? null,
    replace(recordingDocument, isFromVideo) {
      const index = get().sets.findIndex(({ recordingId }) => recordingId === recordingDocument.id);
      if (index >= 0) tell(index, recordingDocument, isFromVideo);
    },
    forget: () => recordings.clear(),
  };
}

const emptySet: Omit<HomeSet, 'result' | 'item'> = {
  recordingId: null,
  keeping: 'none',
  found: null,
  judgements: [],
  summary: null,
  isFromVideo: false,
  painDuring: null,
  isDiscarded: false,
  problem: null,
};

/** Null where this browser can't record: the joints are kept all the same. */
function recordingType({ pickRecordingType }: HomeAdapters): string | null {
  try {
    return pickRecordingType();
  } catch {
    return null;
  }
}
