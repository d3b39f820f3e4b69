import type { PictureSize } from '#core/measurement/pictureLeg';
import type { Bends } from '#device/live/createBendsReader';
import type { LiveFrame } from '#device/live/liveFrame';
import type { SetStart } from '#device/storage/keptSchemas';
import type { Repository } from '#device/storage/repository';
import type { RepetitionItem } from '#documents/plan/planDocument';
import type { SetStep } from '#documents/plan/planSteps';
import type { SessionDocument } from '#documents/session/sessionDocument';
import { explainProblem } from '#shell/explainProblem';
import type { ShownRecording } from '#shell/tracking/shownRecording';
import { message } from '#words/messages/message';
import type { SetResult } from '../guide/guideState';
import { buildSetStart } from './buildSetStart';
import type { HomeAdapters } from './homeAdapters';
import type { HomeCamera } from './homeCamera';
import { createHomeSets, type HomeSets } from './homeSets';
import type { HomeStore } from './homeStore';
import { keepOwnVideo } from './keepOwnVideo';
import { startSetRecorder, type RecordedSet, type RecorderEvent, type SetRecorder } from './setRecorder';

/** What a running set reports to the guide. */
export type RunningSetEvent = Exclude<RecorderEvent, { kind: 'problem' }>;

/** Records the sets that the guide wants recorded, and turns each into a saved recording. */
export interface SetKeeper extends Pick<HomeSets, 'recording' | 'replace' | 'giveUp' | 'forget'> {
  /**
   * @param bends  resolves once they are read; null where there are none
   * @param onEvent  hears of the set until it is ended
   */
  start(
    step: SetStep,
    bends: Promise<Bends | null>,
    size: PictureSize,
    onEvent: (event: RunningSetEvent) => void,
  ): void;
  push(frame: LiveFrame): void;
  /** The person was asked to begin: what the recording holds from before is not a repetition of the set. */
  go(): void;
  pause(): void;
  resume(): void;
  /** Writes pending data to storage. */
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
}

interface KeeperParts {
  adapters: HomeAdapters;
  home: Pick<HomeStore, 'get' | 'set'>;
  repository: Promise<Repository>;
  camera: Pick<HomeCamera, 'stream' | 'model'>;
  /** The session so far; its end is not reached yet. */
  session: () => SessionDocument;
}

interface Running {
  id: string;
  isOver: boolean;
  recorder: SetRecorder | null;
  begun: Promise<SetRecorder | null>;
}

export function createSetKeeper({ adapters, home, repository, camera, session }: KeeperParts): SetKeeper {
  const { get, set } = home;
  const sets = createHomeSets(home);
  let running: Running | null = null;
  let underWay: Promise<unknown> = Promise.resolve();

  const queue = (work: () => Promise<void>) => {
    underWay = underWay.then(work).catch((error: unknown) => {
      set({ problem: explainProblem(error, 'keep') });
    });
  };
  const showRecorded = (index: number, { recording, isKept, isWaiting, problem }: RecordedSet) => {
    sets.show(index, recording, isWaiting ? 'coming' : 'first');
    sets.change(index, { keeping: isKept ? 'kept' : 'memory', problem });
  };
  const startOf = (
    step: SetStep,
    item: RepetitionItem,
    filmed: Pick<SetStart, 'widthPx' | 'heightPx' | 'model' | 'videoType'>,
  ): SetStart => {
    const startedAt = adapters.now().toISOString();
    return buildSetStart(step, item, get().plan, {
      id: adapters.newId(),
      startedAt,
      visitId: session().id,
      ...filmed,
    });
  };
  const begin = async (
    mine: Running,
    asked: SetStart,
    bends: Promise<Bends | null>,
    stream: MediaStream,
    onEvent: (event: RunningSetEvent) => void,
  ) => {
    const kept = await repository;
    const known = await bends;
    const setup = { ...asked.setup, ...(known === null ? {} : { bends: known }) };
    // A set that is interrupted finds its session; where it can't be kept, the set itself says why.
    await kept.sessions.save(session()).catch(() => undefined);
    const { pace } = get();
    mine.recorder = await startSetRecorder({
      adapters,
      repository: kept,
      stream,
      start: { ...asked, setup },
      isCounting: pace.state === 'known' && pace.hasFeedback,
      onEvent(event) {
        if (event.kind === 'problem') {
          set({ problem: { title: message('trouble.not-all-saved'), sentence: event.sentence } });
        } else if (!mine.isOver) onEvent(event);
      },
    });
    return mine.recorder;
  };
  const whenBegun = (act: (recorder: SetRecorder) => void) =>
    void running?.begun.then((recorder) => recorder !== null && act(recorder));
  const end = (): Running | null => {
    const ended = running;
    running = null;
    if (ended !== null) ended.isOver = true;
    return ended;
  };

  return {
    recording: sets.recording,
    replace: sets.replace,
    giveUp: sets.giveUp,
    forget: sets.forget,
    start(step, bends, size, onEvent) {
      const { item } = step;
      const stream = camera.stream();
      const model = camera.model();
      if (item.kind === 'hold' || stream === null || model === null) return;
      const { widthPx, heightPx } = size;
      const start = startOf(step, item, { widthPx, heightPx, model, videoType: recordingType(adapters) });
      const mine: Running = { id: start.id, isOver: false, recorder: null, begun: Promise.resolve(null) };
      running = mine;
      mine.begun = begin(mine, start, bends, stream, onEvent).catch((error: unknown) => {
        set({ problem: explainProblem(error, 'record') });
        return null;
      });
    },
    push: (frame) => running?.recorder?.push(frame),
    go: () => whenBegun((recorder) => recorder.go()),
    pause: () => whenBegun((recorder) => recorder.pause()),
    resume: () => whenBegun((recorder) => recorder.resume()),
    flush: () => whenBegun((recorder) => void recorder.flush()),
    discard() {
      const ended = end();
      if (ended !== null) queue(async () => (await ended.begun)?.discard());
    },
    stop(index) {
      const ended = end();
      if (ended === null) return;
      sets.change(index, { recordingId: ended.id, keeping: 'finishing' });
      queue(async () => {
        const recorded = (await (await ended.begun)?.finish(session)) ?? null;
        if (recorded === null) return sets.change(index, { recordingId: null, keeping: 'none' });
        showRecorded(index, recorded);
      });
    },
    keepVideo(stepIndex, recording, file) {
      const step = get().steps[stepIndex];
      if (step === undefined || step.item.kind === 'hold') return;
      const { item } = step;
      const { widthPx, heightPx } = recording.videoFacts;
      const videoType =
        /webm|matroska/.test(file.type) || file.name.endsWith('.mkv') ? 'video/webm' : 'video/mp4';
      const start = startOf(step, item, { widthPx, heightPx, model: recording.model, videoType });
      const index = get().sets.length;
      const result = ownVideoResult(step, item, stepIndex);
      sets.add([{ item, result, recordingId: start.id, keeping: 'finishing' }]);
      queue(async () => {
        showRecorded(index, await keepOwnVideo(start, recording, file, await repository, session));
      });
    },
    takeResults(results) {
      const { sets: known, steps } = get();
      if (results.length === known.length) return;
      sets.add(
        results.slice(known.length).map((result) => {
          const { item } = steps[result.stepIndex]!;
          return { item, result, recordingId: null, keeping: 'none' };
        }),
      );
      queue(async () => (await repository).sessions.save(session()));
    },
    async settled() {
      let seen;
      do {
        seen = underWay;
        await seen;
      } while (seen !== underWay);
    },
  };
}

/** A set that was filmed with another camera: nobody counted along. */
function ownVideoResult(
  { itemIndex, side, number }: SetStep,
  { task, repetitions }: RepetitionItem,
  stepIndex: number,
): SetResult {
  return {
    stepIndex,
    itemIndex,
    task,
    side,
    number,
    prescribed: repetitions,
    counted: null,
    heldMs: null,
    cutShort: null,
    isRecorded: true,
  };
}

/** Null where this browser can't record: the joints are kept all the same. */
function recordingType({ pickRecordingType }: HomeAdapters): string | null {
  try {
    return pickRecordingType();
  } catch {
    return null;
  }
}
