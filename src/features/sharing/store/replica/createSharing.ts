import { createStore, type StoreApi } from 'zustand/vanilla';
import { Problem } from '#core/problem';
import { RoundProblem, type Replica, type RoundFault } from '#device/replica/openReplica';
import type { OpenedRepository } from '#device/storage/openRepository';
import { StorageProblem } from '#device/storage/storageProblem';
import type { People } from '#documents/practice/peopleNote';
import { sharedScopes } from '#documents/practice/sharedHead';
import { z } from '#documents/schema/zod';
import { explainProblem } from '#shell/explainProblem';
import type { KeyPair } from '#shell/seal';
import type { SignedLog } from '#shell/signedLog';
import { createReplication, type Replication, type ShownNamesake } from './createReplication';
import { settingsKey } from './isSharing';
import type { Namesake, RefusalReason } from './refusal';
import { TooManyRefused } from './refused';
import { readServerAddress } from './serverAddress';

const settingsSchema = z.strictObject({
  /** Of the practice's database. */
  address: z.string().max(500),
  user: z.string().max(200),
  password: z.string().max(500),
  scope: z.enum(sharedScopes),
  isOn: z.boolean(),
});
export type SharingSettings = z.infer<typeof settingsSchema>;

export interface SharingState {
  /** Origins to which the page may connect: the practice's server first, where the build names one. */
  allowed: readonly string[];
  settings: SharingSettings;
  /**
   * 'waiting': it tries again by itself; the sentence says why. 'stopped': somebody has to start it again.
   * 'elsewhere': another tab does it.
   */
  state: 'off' | 'elsewhere' | 'exchanging' | 'up-to-date' | 'waiting' | 'stopped';
  sentence: string | null;
  /** When both last had the same; null before that. */
  lastAt: string | null;
  refused: { reason: RefusalReason; count: number }[];
  /** Patients of colleagues whose pseudonym is used here for somebody else, who are not taken in. */
  namesakes: readonly ShownNamesake[];
  /** Colleagues in the list whom another one took out. */
  outElsewhere: readonly { initials: string; by: string }[];
  /** Who took this device's owner out, initials. */
  outOf: readonly string[];
}

/** What sharing needs from the world around it; tests hand in plain objects. */
export interface SharingWorld {
  openRepository: () => Promise<OpenedRepository>;
  openReplica: () => Promise<Replica>;
  readPeople(): Promise<People | null>;
  readKeys(): Promise<readonly KeyPair[]>;
  /** Where it is signed that two records are of one person. */
  log: Pick<SignedLog, 'add'>;
  /** Origins to which the page may connect. */
  allowed: readonly string[];
  newId(): string;
  now(): Date;
  /** Resolves after a time, or when the signal is aborted. */
  pause(ms: number, signal: AbortSignal): Promise<void>;
}

/** Sharing within the practice through a server. No action rejects: what goes wrong is in the state. */
export interface Sharing {
  readonly store: StoreApi<SharingState>;
  /** Continues where it was on when the page was last closed. */
  resume(): Promise<void>;
  start(settings: Omit<SharingSettings, 'isOn'>): Promise<void>;
  /** Stops; the sealed copies stay, so that it can continue. */
  stop(): Promise<void>;
  /** Exchanges now, instead of waiting. */
  exchange(): void;
  /** Signs that a colleague's patient is the one here under the same pseudonym; both records become one on all devices. */
  mergeNamesake(namesake: Namesake): Promise<void>;
}

/** Why sharing ends where everything on this device is deleted. */
const erased = new Error('Everything was deleted.');
/** How long to wait after a failure, ms: twice as long each time. */
const firstWaitMs = 2000;
const longestWaitMs = 120_000;
/** Where the server says nothing by itself. */
const pollMs = 60_000;

const off: Omit<SharingState, 'allowed'> = {
  settings: { address: '', user: '', password: '', scope: 'records', isOn: false },
  state: 'off',
  sentence: null,
  lastAt: null,
  refused: [],
  namesakes: [],
  outElsewhere: [],
  outOf: [],
};

export function createSharing(world: SharingWorld): Sharing {
  const store = createStore<SharingState>(() => ({ ...off, allowed: world.allowed }));
  const { getState: get, setState: set } = store;
  let running: { abort: AbortController; ended: Promise<void> } | null = null;
  let wake: () => void = () => undefined;
  let current: Replication | null = null;

  const keep = async (settings: SharingSettings) => {
    const { repository } = await world.openRepository();
    await repository.replica.put(settingsKey, settings);
  };
  const show = async (replication: Replication, changed: Partial<SharingState>) => {
    const counts = new Map<RefusalReason, number>();
    for (const { reason, namesake } of replication.refused.list())
      if (namesake === null) counts.set(reason, (counts.get(reason) ?? 0) + 1);
    const { outElsewhere, outOf } = await replication.circle();
    const refused = [...counts].map(([reason, count]) => ({ reason, count }));
    set({ ...changed, refused, namesakes: await replication.namesakes(), outElsewhere, outOf });
  };

  const exchangeAll = async (settings: SharingSettings, abort: AbortController) => {
    const { signal } = abort;
    const { repository } = await world.openRepository();
    const replica = await world.openReplica();
    let sleeping = new AbortController();
    wake = () => sleeping.abort();
    signal.addEventListener('abort', wake);
    const readPeople = async () => {
      const people = await world.readPeople();
      if (people === null)
        throw new Problem('storage', 'The list of colleagues on this device can’t be read.');
      return people;
    };
    const { readKeys, newId, now } = world;
    const parts = {
      onErased: () => abort.abort(erased),
      repository,
      replica,
      readPeople,
      readKeys,
      scope: settings.scope,
      newId,
      now,
    };
    const replication = await createReplication(parts, () => wake());
    current = replication;
    let waitMs = 0;
    let isComplete = false;
    try {
      while (!signal.aborted) {
        sleeping = new AbortController();
        try {
          set({ state: 'exchanging', sentence: null });
          if (!isComplete) await replication.sendAll();
          isComplete = true;
          const isMore = await replica.round(settings, signal);
          if (signal.aborted) return;
          const isToSend = await replication.receive();
          await replication.settled();
          waitMs = 0;
          if (isMore || isToSend) continue;
          await show(replication, { state: 'up-to-date', lastAt: now().toISOString() });
        } catch (error) {
          if (error instanceof TooManyRefused) {
            await show(replication, {});
            await keep({ ...settings, isOn: false }); // Not before somebody asks for it.
            throw error;
          }
          if (!(error instanceof RoundProblem)) isComplete = false;
          waitMs = Math.min(longestWaitMs, Math.max(firstWaitMs, waitMs * 2));
          await show(replication, { state: 'waiting', sentence: sentenceOf(error) });
        }
        if (sleeping.signal.aborted) continue;
        const wait = world.pause(waitMs === 0 ? pollMs : waitMs, sleeping.signal);
        await (waitMs === 0 ? Promise.race([wait, replica.news(settings, sleeping.signal)]) : wait);
        sleeping.abort();
      }
    } finally {
      signal.removeEventListener('abort', wake);
      current = null;
      replication.stop();
      await replica.close();
    }
  };

  const run = async (settings: SharingSettings, abort: AbortController) => {
    const { signal } = abort;
    try {
      set({ state: 'elsewhere', sentence: null });
      const { repository } = await world.openRepository();
      const release = await repository.takeTurn('sharing', signal);
      try {
        await exchangeAll(settings, abort);
      } finally {
        release();
      }
      if (signal.reason === erased) set(off);
    } catch (error) {
      if (signal.reason === erased) set(off);
      else if (!signal.aborted) set({ state: 'stopped', sentence: sentenceOf(error) });
    }
  };
  const begin = (settings: SharingSettings) => {
    const abort = new AbortController();
    set({ settings });
    running = { abort, ended: run(settings, abort) };
  };
  const end = async () => {
    running?.abort.abort();
    await running?.ended;
    running = null;
  };

  return {
    store,
    async resume() {
      if (running !== null) return;
      try {
        const { repository } = await world.openRepository();
        const result = settingsSchema.safeParse(await repository.replica.get(settingsKey));
        if (!result.success) return;
        set({ settings: result.data });
        if (result.data.isOn) begin(result.data);
      } catch (error) {
        set({ state: 'stopped', sentence: sentenceOf(error) });
      }
    },
    async start(asked) {
      await end();
      try {
        const { repository, problem } = await world.openRepository();
        if (!repository.lasting.records && problem !== null) throw problem;
        const settings = { ...asked, address: readServerAddress(asked.address, world.allowed), isOn: true };
        const people = await world.readPeople();
        if ((await world.readKeys()).length === 0)
          throw new Problem('file', 'There is no key on this device. Make one above.');
        if ((people?.initials ?? '') === '') throw new Problem('file', 'Enter your initials above first.');
        await keep(settings);
        begin(settings);
      } catch (error) {
        set({ state: 'off', sentence: sentenceOf(error) });
      }
    },
    async stop() {
      await end();
      const settings = { ...get().settings, isOn: false };
      try {
        await keep(settings);
        set({ settings, state: 'off', sentence: null });
      } catch (error) {
        set({ state: 'off', sentence: sentenceOf(error) });
      }
    },
    exchange: () => wake(),
    async mergeNamesake({ pseudonym, patientId }) {
      try {
        await world.log.add(pseudonym, { what: 'taken', about: patientId });
        await current?.retryNamesakes();
        if (current !== null) await show(current, {});
        wake();
      } catch (error) {
        set({ sentence: sentenceOf(error) });
      }
    },
  };
}

const roundWords: Record<RoundFault, string> = {
  network: 'The server does not answer. What you change is kept here, and is sent when it answers again.',
  'too-large': 'The server sent far more than it was asked for. Nothing of it was used; ask whoever runs it.',
  unreadable:
    'What the server answers is not what such a server says. Nothing of it was used; check the address.',
  unauthorised: 'The server does not accept this user and password. Check both with whoever runs it.',
  'no-database': 'The server has no such database. Check the address with whoever runs it.',
  refused: 'The server refuses what is sent. Ask whoever runs it to look at its settings.',
  full: 'This device has no room for more. Nothing is lost; free some space, and it continues.',
  other: 'The server reports a fault of its own. It is tried again; ask whoever runs it if that stays so.',
};

function sentenceOf(error: unknown): string {
  if (error instanceof RoundProblem) return roundWords[error.fault];
  if (error instanceof StorageProblem && error.reason === 'full') return roundWords.full;
  return explainProblem(error, 'do').sentence;
}
