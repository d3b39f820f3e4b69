import { createStore, type StoreApi } from 'zustand/vanilla';
import { Problem } from '#core/problem';
import type { OpenedRepository } from '#device/storage/openRepository';
import { handOverAgain } from '#documents/backup/handOverManifest';
import { latestIds, type LogEntry } from '#documents/patient/logEntry';
import type { HandOver as HandOverRecord, PatientDocument } from '#documents/patient/patientDocument';
import type { Colleague } from '#documents/practice/peopleNote';
import type { DeviceSigner } from '#shell/deviceSigner';
import { explainProblem, type Doing } from '#shell/explainProblem';
import { isSealed, sealFor, unseal, type KeyPair } from '#shell/seal';
import { signLogEntry } from '#shell/signedLog';
import { openHandOver, type ReadableHandOver } from './openHandOver';
import { packHandOver, type HandedOver } from './packHandOver';
import { checkHandOver, takeHandOver, type HandOverReport } from './takeHandOver';

export interface HandOverState {
  /** 'asks': a record was read whole, and the user has to say whether it is taken in. */
  state: 'idle' | 'packing' | 'given' | 'checking' | 'asks' | 'taking' | 'taken';
  /** What was given to whom, and the public key that signed it. */
  given: { to: string; signer: string; contents: HandedOver } | null;
  /** What was opened. */
  found: (HandOverReport & Pick<ReadableHandOver, 'createdAt' | 'by' | 'signer'>) | null;
  sentence: string | null;
}

/** What handing over needs from the world around it; tests hand in plain objects. */
export interface HandOverWorld {
  openRepository: () => Promise<OpenedRepository>;
  /** The keys of this device, the one in use first. */
  readKeys(): Promise<KeyPair[]>;
  /** Own initials; empty where they were not given. */
  initials(): Promise<string>;
  /** What signs, and the public half of its key; null where this device can't sign. */
  signer(): Promise<DeviceSigner | null>;
  saveBlob(fileName: string, blob: Blob): void;
  newId(): string;
  now(): Date;
}

/** Handing a patient over to a colleague, and taking one over. No action rejects: what goes wrong is in the state. */
export interface HandOver {
  readonly store: StoreApi<HandOverState>;
  /** Saves a patient's record as a file that only the colleague opens. */
  give(patientId: string, colleague: Colleague): Promise<void>;
  /** Reads and checks a file from a colleague; nothing is written. */
  open(file: Blob): Promise<void>;
  /** @param replaces  whether other versions kept here are replaced */
  take(replaces: boolean): Promise<void>;
  dismiss(): void;
}

const idle: HandOverState = { state: 'idle', given: null, found: null, sentence: null };

export function createHandOver(world: HandOverWorld): HandOver {
  const store = createStore<HandOverState>(() => idle);
  let opened: ReadableHandOver | null = null;

  const attempt = async (
    state: HandOverState['state'],
    doing: Doing,
    work: () => Promise<Partial<HandOverState>>,
  ) => {
    store.setState({ ...idle, state });
    try {
      store.setState(await work());
    } catch (error) {
      store.setState({ ...idle, sentence: explainProblem(error, doing).sentence });
    }
  };
  const ownInitials = async () => {
    const initials = await world.initials();
    if (initials === '')
      throw new Problem('file', 'Enter your initials under Practice, in the list of patients, first.');
    return initials;
  };
  /** What is noted in the record. */
  const entryOf = async (
    change: Pick<HandOverRecord, 'kind' | 'colleague' | 'key'>,
  ): Promise<HandOverRecord> => ({
    id: world.newId(),
    at: world.now().toISOString(),
    by: await ownInitials(),
    ...change,
  });
  /** What is signed of it, after all that is in the record. */
  const loggedOf = (
    { id, at, by, kind: what }: HandOverRecord,
    { pseudonym, log }: Pick<PatientDocument, 'pseudonym' | 'log'>,
    signer: DeviceSigner | null,
  ): Promise<LogEntry> =>
    signLogEntry(pseudonym, { id: world.newId(), at, by, what, about: id, after: latestIds(log) }, signer);
  const unsealed = async (file: Blob): Promise<Blob> => {
    if (!(await isSealed(file)))
      throw new Problem('file', 'It is not a sealed file. Choose one that ends in “.age”.');
    let first: unknown = new Problem('file', 'There is no key on this device. Make one under Practice.');
    for (const [index, { identity }] of (await world.readKeys()).entries()) {
      try {
        return await unseal(identity, file, handOverAgain);
      } catch (error) {
        if (index === 0) first = error;
      }
    }
    throw first;
  };

  return {
    store,
    give: (patientId, { initials: to, key }) =>
      attempt('packing', 'save', async () => {
        const { repository } = await world.openRepository();
        const given = await entryOf({ kind: 'given', colleague: to, key });
        const signer = await world.signer();
        if (signer === null)
          throw new Problem(
            'file',
            'This browser can’t sign here. Open the program over https, in a normal window.',
          );
        const kept = await repository.patients.find(patientId);
        if (kept === null) throw new Problem('storage', 'This patient is no longer kept on this device.');
        const logged = await loggedOf(given, kept, signer);
        const withGiven = (record: PatientDocument) => ({
          ...record,
          handOvers: [...record.handOvers, given],
          log: [...record.log, logged],
        });
        const patient = withGiven(kept);
        const { blob, contents } = await packHandOver(
          repository,
          patient,
          { createdAt: given.at, by: given.by },
          signer.sign,
        );
        const sealed = await sealFor([key], blob);
        await repository.patients.update(patientId, withGiven);
        world.saveBlob(`overfoot-hand-over-${given.at.slice(0, 10)}.age`, sealed);
        return { state: 'given', given: { to, signer: signer.key, contents } };
      }),
    async open(file) {
      opened = null;
      await attempt('checking', 'open', async () => {
        const handOver = await openHandOver(await unsealed(file));
        const report = await checkHandOver(handOver, (await world.openRepository()).repository);
        opened = handOver;
        const { createdAt, by, signer } = handOver;
        return { state: 'asks', found: { ...report, createdAt, by, signer } };
      });
    },
    async take(replaces) {
      const handOver = opened;
      const { found } = store.getState();
      if (handOver === null) return;
      opened = null;
      await attempt('taking', 'keep', async () => {
        const { by: colleague, signer: key } = handOver;
        const taken = await entryOf({ kind: 'taken', colleague, key });
        const { repository } = await world.openRepository();
        const signer = await world.signer();
        const signed = (record: PatientDocument) => loggedOf(taken, record, signer);
        await takeHandOver(handOver, repository, { replaces, by: taken.by, taken, signed });
        return { state: 'taken', found };
      });
    },
    dismiss() {
      opened = null;
      store.setState(idle);
    },
  };
}
