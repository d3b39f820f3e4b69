import type { Repository } from '#device/storage/repository';
import { parsePlan } from '#documents/plan/parsePlan';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { explainProblem } from '#shell/explainProblem';
import type { MeasuringProgress } from '#shell/tracking/measureFromVideo';
import { message } from '#words/messages/message';
import { nothingYet } from '../rules/today';
import type { BackgroundMeasuring, BackgroundState } from './backgroundMeasuring';
import { createSessionList, type SessionList } from './createSessionList';
import type { HomeAdapters } from './homeAdapters';
import type { BackgroundView, HomeCommon, InterruptedView } from './homeState';
import { readToday } from './readToday';
import { recoverInterrupted } from './recoverInterrupted';

/** What a home session keeps on this device, and what it finds there. */
export interface HomeStorage {
  /** Opens it, once; resolves when lists are there. Never rejects. */
  open(): Promise<void>;
  /** Resolves once storage is open; never where it is blocked. */
  readonly repository: Promise<Repository>;
  readonly sessions: SessionList;
  recoverInterrupted(id: string): Promise<void>;
  dropInterrupted(id: string): void;
  undoDrop(id: string): void;
  /** Deletes what was dropped. */
  settleDrops(): void;
  /** Lists what the first page shows: plans, how last time went, what was not sent. */
  listToday(): Promise<void>;
  /** Frees the device for a recording. */
  pauseMeasuring(): Promise<void>;
  resumeMeasuring(): void;
}

interface StorageParts {
  adapters: HomeAdapters;
  get: () => HomeCommon;
  set: (change: Partial<HomeCommon>) => void;
  /** Called for each recording that was measured again from its video. */
  onMeasured: (recording: RecordingDocument) => void;
  /** Called for each that could not be. */
  onFailed: (recordingId: string) => void;
}

export function createHomeStorage(parts: StorageParts): HomeStorage {
  const { adapters, get, set, onMeasured, onFailed } = parts;
  let opened: (repository: Repository) => void = () => undefined;
  const repository = new Promise<Repository>((resolve) => (opened = resolve));
  const sessions = createSessionList(repository);
  let background: BackgroundMeasuring | null = null;
  let opening: Promise<void> | null = null;
  let isRecording = false;

  const open = async () => {
    try {
      const { repository: found, problem } = await adapters.openRepository();
      const isLasting = found.lasting.records && found.lasting.videos;
      set({
        storage:
          isLasting || problem === null
            ? { state: 'lasting' }
            : found.lasting.records
              ? { state: 'no-videos', sentence: message('trouble.no-videos', { problem: problem.message }) }
              : { state: 'memory', sentence: message('trouble.memory', { problem: problem.message }) },
      });
      opened(found);
      if (isLasting) void found.askToPersist().catch(() => undefined);
      background = adapters.createBackground(found);
      background.store.subscribe((state, before) => void follow(found, state, before));
      await listInterrupted();
    } catch (error) {
      set({
        storage: { state: 'blocked', sentence: explainProblem(error, 'open').sentence },
        plans: [],
      });
    }
  };
  const follow = async (kept: Repository, state: BackgroundState, before: BackgroundState) => {
    set({ background: viewOf(state) });
    Object.keys(state.problems)
      .filter((id) => before.problems[id] === undefined)
      .forEach(onFailed);
    for (const id of state.done.filter((one) => !before.done.includes(one))) {
      const found = await kept.recordings.find(id).catch(() => null);
      if (found !== null) onMeasured(found.recording);
    }
  };
  const listPlans = async () => {
    const { found } = await (await repository).plans.list();
    return found.flatMap(({ text, savedAt }) => {
      try {
        return [{ plan: parsePlan(text), savedAt }];
      } catch {
        return []; // One of another version; its file is still where it came from.
      }
    });
  };
  const listToday = async () => {
    const kept = await listPlans();
    const plans = kept.map(({ plan }) => plan);
    const acceptedAt = kept[0]?.savedAt ?? '';
    const isGivenUp = (id: string) => background?.store.getState().problems[id] !== undefined;
    const interrupted = get().interrupted.filter(({ state }) => state !== 'dropped');
    const read = async () => {
      const { now } = adapters;
      const known = { sessions: await sessions(), plans, acceptedAt, interrupted, isGivenUp, now: now() };
      return readToday(await repository, known);
    };
    set({ plans, today: await read().catch(() => nothingYet) });
  };
  const list = () => listToday().catch(() => set({ plans: get().plans ?? [] }));
  const listInterrupted = async () => {
    const { found } = await (await repository).interrupted();
    set({
      interrupted: found.map(({ start, lastRowMs }): InterruptedView => {
        const { id, visitId: sessionId, startedAt, setup } = start;
        const { task, side } = setup;
        const seconds = Math.round((lastRowMs ?? 0) / 1000);
        return { id, sessionId, startedAt, task, side, seconds, state: 'offered' };
      }),
    });
  };
  const mark = (id: string, state: InterruptedView['state']) =>
    set({ interrupted: get().interrupted.map((one) => (one.id === id ? { ...one, state } : one)) });
  const take = (id: string) => set({ interrupted: get().interrupted.filter((one) => one.id !== id) });

  return {
    async open() {
      opening ??= open();
      await opening;
      if (!isRecording) background?.look();
    },
    repository,
    sessions,
    async recoverInterrupted(id) {
      const found = get().interrupted.find((one) => one.id === id);
      if (found?.state !== 'offered') return;
      mark(id, 'keeping');
      try {
        const { openFrameSource } = adapters;
        await recoverInterrupted(id, { repository: await repository, openFrameSource });
        take(id);
        background?.look();
        await list();
      } catch (error) {
        mark(id, 'offered');
        set({ problem: explainProblem(error, 'keep') });
      }
    },
    dropInterrupted(id) {
      mark(id, 'dropped');
      void list();
    },
    undoDrop(id) {
      mark(id, 'offered');
      void list();
    },
    settleDrops() {
      for (const { id } of get().interrupted.filter(({ state }) => state === 'dropped')) {
        take(id);
        // What can't be deleted now is offered again the next time.
        void repository.then((kept) => kept.dropInterrupted(id)).catch(() => undefined);
      }
    },
    listToday: list,
    async pauseMeasuring() {
      isRecording = true;
      await background?.pause();
    },
    resumeMeasuring() {
      isRecording = false;
      background?.resume();
    },
  };
}

/** Either look takes about half of the time. */
function shareOf({ framesDone, framesExpected, closer }: MeasuringProgress): number {
  if (closer === null) return framesDone / Math.max(1, framesExpected) / 2;
  return (1 + closer.framesDone / Math.max(1, closer.framesExpected)) / 2;
}

function viewOf({ waiting, current, isPaused, problems }: BackgroundState): BackgroundView {
  const progress = current?.progress ?? null;
  const isListed = current !== null && waiting.includes(current.id);
  const others = waiting.length + (current !== null && !isListed ? 1 : 0);
  return {
    waiting: others,
    current: current && { id: current.id, share: progress === null ? 0 : shareOf(progress) },
    isPaused,
    problems: Object.values(problems),
  };
}
