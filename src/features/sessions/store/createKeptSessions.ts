import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Sureness } from '#core/chance/grade';
import { Problem } from '#core/problem';
import type { OpenedRepository } from '#device/storage/openRepository';
import type { Repository } from '#device/storage/repository';
import { storageProblem } from '#device/storage/storageProblem';
import { withTakenLimits } from '#documents/recording/withTakenLimits';
import { createReviewSaver } from '#features/review/store/createReviewSaver';
import { loggedSaver } from '#features/review/store/loggedSaver';
import type { Review } from '#features/review/store/review';
import { explainProblem, type Doing } from '#shell/explainProblem';
import type { SignedLog } from '#shell/signedLog';
import type { ListedSession, SetReading } from '../rules/listedSession';
import { takenLimits } from '../rules/takenLimits';
import { initialKeptSessionsState, type KeptSessionsState, type Removable } from './keptSessionsState';
import { listSessions } from './listSessions';
import { loadSet } from './loadSet';
import { recordsOfPatient } from './recordsOfPatient';
import { createRemovals, type RemovalNotes } from './removals';
import { reviewSession } from './reviewSession';

/** What the kept sessions need from the world around it; tests hand in plain objects. */
export interface KeptSessionsAdapters {
  /** Gives the same repository each time; asked again after it could not be opened. */
  openRepository: () => Promise<OpenedRepository>;
  notes: RemovalNotes;
  nowMs: () => number;
  /** Calls once, later; returns a function that cancels it. */
  later: (ms: number, call: () => void) => () => void;
  /** Forgets what is stored outside the repository. */
  forgetRest: () => void;
  review: Pick<Review, 'openKept'>;
  /** Where it is noted who did what. */
  log: Pick<SignedLog, 'add'>;
  /** How sure it has to be before a side is named. */
  sureness: () => Sureness;
  /** All sessions of a patient with what is known of their sets, newest first, as they are now. */
  sessionsOf: (patient: string) => Promise<readonly ListedSession[]>;
}

/** The sessions that are kept on this device. No action throws or rejects: what goes wrong is in the state. */
export interface KeptSessions {
  readonly store: StoreApi<KeptSessionsState>;
  /**
   * To be called when the screen appears: lists what is kept, then reads it set by set; ends when all is read.
   *
   * @param patient  whose sessions alone are listed; everybody's where left out
   */
  enter(patient?: string): Promise<void>;
  /** Ends the reading: for when the screen closes. */
  leave(): void;
  select(id: string | null): void;
  /** Opens a set's recording, with its video, in the review; `title` is shown above it there. */
  openSet(recordingId: string, title: string): Promise<void>;
  /**
   * Signs that what was said of the body in a session is settled.
   *
   * @param who  initials
   */
  settle(id: string, who: string): Promise<void>;
  /**
   * Opens again what was settled in a session: signed in the patient's record, where what was signed before stays.
   *
   * @param who  initials
   */
  reopen(id: string, who: string): Promise<void>;
  /** Deletes a session or recording with its videos, for good after some seconds. */
  remove(which: Pick<ListedSession, 'id' | 'kind'>): void;
  /** Deletes everything of a patient in the same way: sessions, videos, plans, drafts. */
  removePatient(patient: string): Promise<void>;
  /**
   * The same of several patients at once.
   *
   * @param name  what they are called together
   */
  removePatients(patients: readonly string[], name: string): Promise<void>;
  undoRemove(id: string): void;
  dismissProblem(): void;
  /** @param weeks  the age from which a video counts as old */
  lookAtSpace(weeks: number): Promise<void>;
  /** Deletes the videos of recordings older than this; their measurements stay. */
  freeVideos(weeks: number): Promise<void>;
  /** Deletes everything that this program keeps on this device. */
  eraseAll(): Promise<void>;
}

export function createKeptSessions(adapters: KeptSessionsAdapters): KeptSessions {
  const { openRepository, notes, nowMs, later, review, log, sureness } = adapters;
  const store = createStore<KeptSessionsState>(() => initialKeptSessionsState);
  const { getState: get, setState: set } = store;
  /** Results by recording, with what they were read under: the state of measuring, the limits carried over. */
  const known = new Map<string, { readAs: string; reading: SetReading }>();
  let isShown = false;
  let onlyOf: string | null = null;
  let turn = 0;
  let spaceTurn = 0;
  let watched: Repository | null = null;
  let isSettling = false;

  const repository = async () => (await openRepository()).repository;
  const removals = createRemovals({
    repository,
    notes,
    nowMs,
    later,
    onChange: (pending) => set({ removals: pending }),
    onGone: ({ records }) => {
      const { sessions, unreadable } = get();
      const isLeft = ({ id }: { id: string }) => records.every((one) => one.id !== id);
      set({ sessions: sessions?.filter(isLeft) ?? null, unreadable: unreadable.filter(isLeft) });
    },
    onProblem: (problem) => set({ problem }),
  });

  const readOther = async (recordingId: string) => {
    const { recordings, videos } = await repository();
    const other = await recordings.find(recordingId);
    if (other === null) throw storageProblem('missing');
    const name = other.facts.video;
    const video = name === null ? null : await videos.read(name).catch(() => null);
    return { recording: other.recording, video };
  };
  const open = async (): Promise<Repository | null> => {
    try {
      const { repository, problem } = await openRepository();
      const sentence = problem?.message ?? '';
      const { records, videos } = repository.lasting;
      set({
        storage:
          records && videos ? { state: 'lasting' } : { state: records ? 'no-videos' : 'memory', sentence },
      });
      watch(repository);
      return repository;
    } catch (error) {
      set({ storage: { state: 'blocked', sentence: explainProblem(error, 'open').sentence } });
      return null;
    }
  };
  const readAll = async (kept: Repository, isCurrent: () => boolean): Promise<void> => {
    if (onlyOf !== null) {
      const sessions = await adapters.sessionsOf(onlyOf);
      if (isCurrent()) set({ sessions, unreadable: [] });
      return;
    }
    const { sessions, unreadable, facts } = await listSessions(kept);
    if (!isCurrent()) return;
    const readAs = (id: string) =>
      `${facts.get(id)?.fromVideo ?? 'impossible'} ${takenLimits(sessions, id)?.at ?? ''} ${sureness()}`;
    set({ sessions: withReadings(sessions, (id) => settled(known.get(id), readAs(id))), unreadable });
    for (const id of recordingIds(sessions)) {
      const reading =
        settled(known.get(id), readAs(id)) ??
        (await loadSet(id, takenLimits(sessions, id), sureness(), kept));
      if (!isCurrent()) return;
      known.set(id, { readAs: readAs(id), reading });
      set({ sessions: withReadings(get().sessions ?? [], (other) => (other === id ? reading : null)) });
    }
  };
  const look = async (): Promise<void> => {
    const mine = ++turn;
    const isCurrent = () => mine === turn;
    const kept = await open();
    if (kept === null || !isCurrent()) return;
    try {
      isSettling = true;
      await removals.settle().catch(() => undefined); // What could not be deleted is still listed.
      isSettling = false;
      if (!isCurrent()) return;
      await readAll(kept, isCurrent);
    } catch (error) {
      if (isCurrent()) set({ sessions: get().sessions ?? [], problem: explainProblem(error, 'list') });
    }
  };

  /** What is changed while the list is shown, here or in another tab, is listed at once. */
  const watch = (kept: Repository) => {
    if (kept === watched) return;
    watched = kept;
    kept.subscribe((change) => {
      // In a patient's record stands what was opened again.
      if (change.kind !== 'sessions' && change.kind !== 'recordings' && change.kind !== 'patients') return;
      if (change.id === null) known.clear();
      else known.delete(change.id);
      if (isShown) lookSoon();
    });
  };
  /** Changes that come together are listed once. */
  let isDue = false;
  const lookSoon = () => {
    if (isDue || isSettling) return; // What settling deletes is not listed afterwards anyway.
    isDue = true;
    queueMicrotask(() => {
      isDue = false;
      if (isShown) void look();
    });
  };

  const told = async (doing: Doing, work: (kept: Repository) => Promise<void>) => {
    try {
      await work(await repository());
    } catch (error) {
      set({ problem: explainProblem(error, doing) });
    }
  };
  const weeksAgo = (weeks: number) => new Date(nowMs() - weeks * 7 * 86_400_000).toISOString();
  const lookAtSpace = (weeks: number) =>
    told('read', async (kept) => {
      // A late answer for another age must not overwrite the one asked for last.
      const asked = ++spaceTurn;
      const [space, freeableBytes] = [await kept.space(), await kept.freeableBytes(weeksAgo(weeks))];
      if (asked === spaceTurn) set({ space, freeableBytes });
      set({ isSafe: await kept.askToPersist() });
    });

  const shownSession = (id: string) => get().sessions?.find((session) => session.id === id);

  const removePatients = (patients: readonly string[], name: string | null) =>
    told('delete', async (kept) => {
      const records: Removable[] = [];
      for (const patient of patients) records.push(...(await recordsOfPatient(kept, patient)));
      removals.add({ id: `patient ${patients.join(', ')}`, patients, name, records });
    });

  return {
    store,
    lookAtSpace,
    freeVideos: (weeks) =>
      told('delete', async (kept) => {
        set({ freedBytes: await kept.freeVideos(weeksAgo(weeks)) });
        await look();
        await lookAtSpace(weeks);
      }),
    eraseAll: () =>
      told('delete', async (kept) => {
        await kept.eraseAll();
        adapters.forgetRest();
        set({ selected: null, space: null, freeableBytes: null, freedBytes: null });
        await look();
      }),
    enter(patient) {
      isShown = true;
      if (onlyOf !== (patient ?? null)) set({ sessions: null, selected: null });
      onlyOf = patient ?? null;
      return look();
    },
    leave() {
      isShown = false;
      turn++;
    },
    select: (selected) => set({ selected }),
    async openSet(recordingId, title) {
      if (get().opening !== null) return;
      set({ opening: recordingId, problem: null });
      try {
        const opened = await repository();
        const { recordings, videos } = opened;
        const kept = await recordings.find(recordingId);
        if (kept === null) throw storageProblem('missing');
        // Without its video the joints can still be viewed.
        const video =
          kept.facts.video === null ? null : await videos.read(kept.facts.video).catch(() => null);
        if (!isShown) return;
        const sessions = get().sessions ?? [];
        const recording = withTakenLimits(kept.recording, takenLimits(sessions, recordingId));
        const session = reviewSession(sessions, recordingId);
        const save = createReviewSaver(opened, kept);
        const patient = session?.patient ?? '';
        review.openKept(recording, title, video, {
          session,
          save:
            patient === ''
              ? save
              : loggedSaver(save, recording, (what) => log.add(patient, { what, about: recordingId })),
          readOther,
        });
      } catch (error) {
        set({ problem: explainProblem(error, 'open') });
      } finally {
        set({ opening: null });
      }
    },
    settle: (id, who) =>
      told('keep', async (kept) => {
        const session = await kept.sessions.find(id);
        if (session === null) throw storageProblem('missing');
        // Never before what it answers, whose device may have a clock that is ahead.
        const reopenedMs = Date.parse(shownSession(id)?.reopened?.at ?? '1970-01-01');
        const at = new Date(Math.max(nowMs(), reopenedMs + 1)).toISOString();
        const signed = { visitId: id, by: 'therapist' as const, who, at };
        await kept.sessions.save({ ...session, settles: [...session.settles, signed] });
        await log.add(session.patient, { what: 'concern-settled', about: id, by: who });
        if (isShown) await look();
      }),
    reopen: (id, who) =>
      told('keep', async (kept) => {
        const session = await kept.sessions.find(id);
        if (session === null) throw storageProblem('missing');
        if ((await kept.patients.named(session.patient)) === null)
          throw new Problem(
            'storage',
            'There is no record of this patient yet in which it could be signed. Open the list of patients, which makes one.',
          );
        const settled = shownSession(id)?.settlement?.at;
        const after = settled === undefined ? {} : { after: settled };
        await log.add(session.patient, { what: 'review-withdrawn', about: id, by: who, ...after });
        if (isShown) await look();
      }),
    remove: ({ id, kind }) => removals.add({ id, patients: [], name: null, records: [{ id, kind }] }),
    removePatient: (patient) => removePatients([patient], null),
    removePatients,
    undoRemove: removals.undo,
    dismissProblem: () => set({ problem: null }),
  };
}

/** What was read before, where nothing has changed since; null where it is to be read. */
function settled(
  before: { readAs: string; reading: SetReading } | undefined,
  readAs: string,
): SetReading | null {
  return before?.readAs === readAs && before.reading.state === 'read' ? before.reading : null;
}

function recordingIds(sessions: readonly ListedSession[]): string[] {
  return sessions.flatMap(({ sets }) =>
    sets.flatMap(({ line: { sessionId: recordingId } }) => (recordingId === null ? [] : [recordingId])),
  );
}

/** The sessions with readings put in where there are some; a session without a new one stays the same object. */
function withReadings(
  sessions: readonly ListedSession[],
  readingOf: (recordingId: string) => SetReading | null,
): ListedSession[] {
  return sessions.map((session) => {
    let isChanged = false;
    const sets = session.sets.map((one) => {
      const reading = one.line.sessionId === null ? null : readingOf(one.line.sessionId);
      if (reading === null || reading === one.reading) return one;
      isChanged = true;
      return { ...one, reading };
    });
    return isChanged ? { ...session, sets } : session;
  });
}
