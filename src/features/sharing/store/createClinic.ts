import { createStore, type StoreApi } from 'zustand/vanilla';
import { Problem } from '#core/problem';
import type { OpenedRepository } from '#device/storage/openRepository';
import { explainProblem, type Doing } from '#shell/explainProblem';
import { weakPassphrase } from '#shell/passphrase';
import { backUpKey, isSealed, newKeyPair, restoreKey, unseal, type KeyPair } from '#shell/seal';
import { asReceived } from './asReceived';
import { readAlong, type CameAlong } from './cameAlong';
import { checkIncoming, type IncomingCheck } from './checkIncoming';
import { followedPlan } from './followedPlan';
import { refuseHandOver } from './handOver/refuseHandOver';
import { unpackParcel, type Parcel } from './parcel';
import { saveParcel, standingOf, type Stake, type Standing } from './saveParcel';
import { readSessionFile } from './sessionFile';

/** The outcome for a file that was opened. */
export interface Incoming {
  fileName: string;
  /**
   * 'asks': another version of it is kept here, and the user has to say whether to replace it; 'doubtful': the
   * user has to say whether it is taken in at all.
   */
  state: 'checking' | 'kept' | 'known' | 'asks' | 'doubtful' | 'refused' | 'left';
  /** Pseudonym and start of the session; null until it was read. */
  session: { patient: string; startedAt: string } | null;
  /** Which device it comes from; null until that is known. */
  sender: string | null;
  /** Recordings that came as files of their own and belong to the session. */
  recordings: number;
  /** What the new version changes; null unless it is asked about. */
  stake: Stake | null;
  /** Why it was refused, or what is doubtful. */
  sentence: string | null;
}

export interface ClinicState {
  /** The public key that plans carry; null before one was made. */
  recipient: string | null;
  /** Earlier keys, which still open what was sealed for them. */
  earlierKeys: number;
  incoming: readonly Incoming[];
  /** What went wrong with a key. */
  sentence: string | null;
}

/** What receiving sessions needs from the world around it; tests hand in plain objects. */
export interface ClinicWorld {
  openRepository: () => Promise<OpenedRepository>;
  /** Those found when the page was opened, the one in use first. */
  firstKeys: readonly KeyPair[];
  /** The current ones: another tab may have made one. */
  readKeys(): Promise<KeyPair[]>;
  /** Rejects where they can't be kept. */
  writeKeys(keys: readonly KeyPair[]): Promise<void>;
  saveBlob(fileName: string, blob: Blob): void;
  now(): Date;
  /** log2 of the cost of trying a key backup's passphrase; age's default if left out. */
  scryptWorkFactor?: number;
}

/** Receiving sessions, sealed or as documents. No action throws or rejects: what goes wrong is in the state. */
export interface Clinic {
  readonly store: StoreApi<ClinicState>;
  /** Makes a key; an earlier one still opens what was sealed for it. */
  makeKey(): Promise<void>;
  /** Saves the key in use as a file that the passphrase opens. */
  backUp(passphrase: string): Promise<void>;
  /** Restores a key from its backup and uses it. */
  restore(file: Blob, passphrase: string): Promise<void>;
  /**
   * Opens files one after another; each is checked whole before anything of it is kept.
   *
   * @param recordings  files that came along; each is kept with the session document among the files that names it
   */
  openFiles(files: readonly File[], recordings?: readonly File[]): Promise<void>;
  /** Decides whether a file is taken in, or replaces what is kept of the same session. */
  decide(index: number, replaces: boolean): Promise<void>;
  clearList(): void;
}

function listedAs(fileName: string, state: Incoming['state'], sentence: string | null): Incoming {
  return { fileName, state, session: null, sender: null, recordings: 0, stake: null, sentence };
}

/** A sent session that was opened, and what is known of it. */
interface Opened {
  parcel: Parcel;
  check: IncomingCheck;
}

export function createClinic(world: ClinicWorld): Clinic {
  let keys = world.firstKeys;
  const ofKeys = () => ({ recipient: keys[0]?.recipient ?? null, earlierKeys: Math.max(0, keys.length - 1) });
  const store = createStore<ClinicState>(() => ({ ...ofKeys(), incoming: [], sentence: null }));
  const { getState: get, setState: set } = store;
  const waiting = new Map<number, Opened>();

  /** A key that could not be kept is not used: what is sealed for it would be lost with the tab. */
  const adopt = async (makePair: () => Promise<KeyPair>, doing: Doing, readKeys = () => world.readKeys()) => {
    try {
      const pair = await makePair();
      const others = (await readKeys()).filter(({ recipient }) => recipient !== pair.recipient);
      await world.writeKeys([pair, ...others]);
      keys = [pair, ...others];
      set({ ...ofKeys(), sentence: null });
    } catch (error) {
      set({ sentence: explainProblem(error, doing).sentence });
    }
  };
  const lookAnew = async () => {
    keys = await world.readKeys();
    set(ofKeys());
  };
  void lookAnew().catch((error: unknown) => set({ sentence: explainProblem(error, 'read').sentence }));
  /** Keys may come from a backup or from another tab. */
  void world
    .openRepository()
    .then(({ repository }) =>
      repository.subscribe((change) => {
        if (change.kind === 'notes' && (change.id === null || change.id === 'keys'))
          void lookAnew().catch(() => undefined);
      }),
    )
    .catch(() => undefined); // Where nothing can be opened, that is reported where files are.
  const tell = (index: number, change: Partial<Incoming>) =>
    set({ incoming: get().incoming.map((one, at) => (at === index ? { ...one, ...change } : one)) });

  /** What is sealed with the key that fits, the one in use first; what is not has to be a session document. */
  const open = async (file: Blob, along: CameAlong): Promise<Parcel> => {
    if (!(await isSealed(file))) {
      const parcel = await readSessionFile(file);
      return { ...parcel, sets: along.of(parcel.session).map((recording) => ({ recording, video: null })) };
    }
    await lookAnew();
    if (keys.length === 0)
      throw new Problem('file', 'There is no key on this device. Make one, or restore it from its backup.');
    let first: unknown = null;
    for (const { identity } of keys) {
      let unsealed: Blob;
      try {
        unsealed = await unseal(identity, file);
      } catch (error) {
        first ??= error;
        continue;
      }
      await refuseHandOver(unsealed);
      return unpackParcel(unsealed);
    }
    throw first;
  };
  const keep = async (index: number, { parcel, check }: Opened) => {
    try {
      await saveParcel(parcel, (await world.openRepository()).repository);
      await check.accept();
      tell(index, { state: 'kept', stake: null });
    } catch (error) {
      tell(index, { state: 'refused', sentence: explainProblem(error, 'keep').sentence });
    }
  };
  const take = async (index: number, file: File, along: CameAlong) => {
    try {
      const sent = await open(file, along);
      const { repository } = await world.openRepository();
      const plan = await followedPlan(sent.session.planId, repository);
      const parcel = asReceived(sent, plan);
      const { patient, startedAt } = parcel.session;
      // Those of a sealed file are part of it.
      const recordings = sent.sender === null && sent.sentAt === null ? parcel.sets.length : 0;
      tell(index, { session: { patient, startedAt }, recordings });
      const check = await checkIncoming(parcel, plan, repository, world.now().getTime());
      tell(index, { sender: check.sender });
      const opened: Opened = { parcel, check };
      const standing = await standingOf(parcel, repository);
      // Nothing is asked about what is kept already, or can't be kept.
      if (standing.kind === 'known' || check.doubts.length === 0) return await place(index, opened, standing);
      waiting.set(index, opened);
      tell(index, { state: 'doubtful', sentence: check.doubts.join(' ') });
    } catch (error) {
      tell(index, { state: 'refused', sentence: explainProblem(error, 'open').sentence });
    }
  };
  /** Keeps it, unless another version is kept already. */
  const place = async (index: number, opened: Opened, standing: Standing) => {
    if (standing.kind === 'another-version') {
      waiting.set(index, opened);
      tell(index, { state: 'asks', stake: standing.stake });
    } else if (standing.kind === 'known') tell(index, { state: 'known' });
    else await keep(index, opened);
  };

  return {
    store,
    makeKey: () => adopt(newKeyPair, 'keep'),
    async backUp(passphrase) {
      const [pair] = keys;
      if (pair === undefined) return;
      const sentence = await weakPassphrase(passphrase);
      set({ sentence });
      if (sentence !== null) return;
      world.saveBlob('overfoot-key-backup.age', await backUpKey(pair, passphrase, world.scryptWorkFactor));
    },
    // Keys that can't be read are no reason to go without the one that is restored.
    restore: (file, passphrase) =>
      adopt(
        () => restoreKey(file, passphrase),
        'open',
        () => world.readKeys().catch(() => []),
      ),
    async openFiles(files, recordings = []) {
      const from = get().incoming.length;
      const listed = files.map(({ name }) => listedAs(name, 'checking', null));
      set({ incoming: [...get().incoming, ...listed] });
      const along = await readAlong(recordings);
      for (const [offset, file] of files.entries()) await take(from + offset, file, along);
      const left = along.leftOut().map(({ fileName, sentence }) => listedAs(fileName, 'refused', sentence));
      set({ incoming: [...get().incoming, ...left] });
    },
    async decide(index, replaces) {
      const opened = waiting.get(index);
      const isDoubtful = get().incoming[index]?.state === 'doubtful';
      waiting.delete(index);
      if (opened === undefined) return;
      tell(index, { state: replaces ? 'checking' : 'left', stake: null, sentence: null });
      if (!replaces) return;
      if (!isDoubtful) return keep(index, opened);
      try {
        const { repository } = await world.openRepository();
        await place(index, opened, await standingOf(opened.parcel, repository));
      } catch (error) {
        tell(index, { state: 'refused', sentence: explainProblem(error, 'keep').sentence });
      }
    },
    clearList() {
      waiting.clear();
      set({ incoming: [] });
    },
  };
}
