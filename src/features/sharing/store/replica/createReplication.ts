import { createQueue } from '#core/createQueue';
import type { Replica } from '#device/replica/openReplica';
import { isOfLibrary } from '#device/storage/keptLibrary';
import type { Repository } from '#device/storage/repository';
import type { KeptChange } from '#device/storage/watchChanges';
import type { People } from '#documents/practice/peopleNote';
import { libraryId, type SharedKind, type SharedScope } from '#documents/practice/sharedHead';
import type { KeyPair } from '#shell/seal';
import { readCircle, type Circle } from './circle';
import { createReceiver } from './createReceiver';
import { createSender } from './createSender';
import { createLocalPatients } from './localPatients';
import type { Namesake, RefusalReason } from './refusal';
import { readRefused, type Refused } from './refused';
import { forgetSent, listRows, type SharedRow } from './sharedRow';

export interface ReplicationParts {
  repository: Repository;
  replica: Replica;
  readPeople(): Promise<People>;
  /** The keys of this device, the one in use first; never none. */
  readKeys(): Promise<readonly KeyPair[]>;
  scope: SharedScope;
  /** Called when everything on this device was deleted, which is its own business. */
  onErased(): void;
  newId(): string;
  now(): Date;
}

/** Keeps what is kept here and the sealed copies the same, both ways; what goes over the line is another's business. */
export interface Replication {
  /** Sends everything that differs. To be called first, and after a failure. */
  sendAll(): Promise<void>;
  /**
   * Takes in what arrived.
   *
   * @returns  whether something is to be sent for it
   */
  receive(): Promise<boolean>;
  /** Resolves once what changed here is among the sealed copies; rejects where it could not be sealed or written. */
  settled(): Promise<void>;
  circle(): Promise<Circle>;
  refused: Refused;
  /** Patients of colleagues whose pseudonym is used here for somebody else, and the record here. */
  namesakes(): Promise<ShownNamesake[]>;
  /** Tries again what was refused for its pseudonym. */
  retryNamesakes(): Promise<void>;
  /** Stops following what changes here. */
  stop(): void;
}

/** A patient of a colleague, with the id of the record here under the same pseudonym. */
export interface ShownNamesake extends Namesake {
  hereId: string;
  /** Whether that is a demo patient, who can be deleted and never becomes one with somebody. */
  isDemoHere: boolean;
}

const isNamesake = (reason: RefusalReason) => reason === 'namesake';
/** For what may be otherwise after the program was started again: it may be a newer one. */
const isRetriedAtStart = (reason: RefusalReason) => reason === 'invalid' || isNamesake(reason);

/** What one document is sent again for what others do with it, at most, until sharing is started again. */
const mostRepairs = 20;

const kindOf: Record<string, SharedKind> = {
  patients: 'patient',
  plans: 'plan',
  sessions: 'session',
  recordings: 'recording',
};

/** @param onChange  called when something here is to be sent */
export async function createReplication(parts: ReplicationParts, onChange: () => void): Promise<Replication> {
  const { repository, replica, readPeople, readKeys, scope, onErased, newId, now } = parts;
  const rows = repository.replica;
  if ((await replica.changes(0, 1)).ids.length === 0) await forgetSent(rows);
  const patients = createLocalPatients(repository);
  const refused = await readRefused(rows);
  const queue = createQueue();
  let failure: unknown = null;
  let isSending = false;
  let known: Promise<Circle> | null = null;
  const circle = () =>
    (known ??= Promise.all([readPeople(), readKeys()]).then(([people, keys]) =>
      readCircle(rows, people, keys),
    ));
  const sender = createSender({
    repository,
    replica,
    patients,
    circle,
    scope,
    newId,
    now,
  });
  const repairs = new Map<string, number>();
  const mayRepair = (name: string) => {
    const count = (repairs.get(name) ?? 0) + 1;
    repairs.set(name, count);
    return count <= mostRepairs;
  };
  let places: Map<string, SharedRow> | null = null;
  const rowAt = async (replicaId: string) => {
    places ??= new Map((await listRows(rows)).map((row) => [row.replicaId, row]));
    return places.get(replicaId);
  };
  const receiver = createReceiver({
    repository,
    replica,
    patients,
    circle,
    onCircle: () => (known = null),
    refused,
    async send(kind, id) {
      if (!mayRepair(`${kind}:${id}`)) return;
      isSending = true;
      await sender.send(kind, id);
    },
    isKnown: async (replicaId) => (await rowAt(replicaId)) !== undefined,
    async onSpoilt(replicaId) {
      const row = await rowAt(replicaId);
      if (row === undefined || !mayRepair(replicaId)) return;
      isSending = true;
      await sender.sendAgain(row);
    },
    now,
  });

  const later = (job: () => Promise<unknown>) => {
    void queue.add(job).then(
      () => onChange(),
      (error: unknown) => {
        failure = error;
        onChange();
      },
    );
  };
  const colleagueKeys = async () => JSON.stringify((await readPeople()).colleagues.map(({ key }) => key));
  let people = await colleagueKeys();
  const stop = repository.subscribe((change: KeptChange) => {
    if (change.kind === 'patient-deleted') return;
    if (change.id === null) return onErased();
    if (isOfLibrary(change)) {
      later(async () => {
        await receiver.retry((reason) => reason === 'library-full' || reason === 'library-damaged');
        await sender.send('library', libraryId);
      });
      return;
    }
    if (change.kind === 'notes') {
      if (change.id !== 'people' && change.id !== 'keys') return;
      later(async () => {
        const next = await colleagueKeys();
        known = null;
        if (next === people && change.id === 'people') return;
        people = next;
        await receiver.retry();
        await sender.sendAll();
      });
      return;
    }
    const kind = kindOf[change.kind]!;
    const id = change.id;
    later(async () => {
      if (kind === 'patient') await patients.refresh(id);
      await sender.send(kind, id);
      // A pseudonym may be free again.
      if (kind === 'patient' && (await patients.byId(id)) === null) await receiver.retry(isNamesake);
    });
  });

  return {
    sendAll: () =>
      queue.add(async () => {
        failure = null;
        known = null;
        // What belonged to the library before is taken over, and sent with it; one that can't be read stays here.
        await repository.library.read().catch(() => undefined);
        await sender.sendAll();
        // The program may have been updated since it could not read them.
        await receiver.retry(isRetriedAtStart);
      }),
    receive: () =>
      queue.add(async () => {
        isSending = false;
        places = null;
        await receiver.receive();
        return isSending;
      }),
    async settled() {
      await queue.idle();
      if (failure === null) return;
      const error = failure;
      failure = null;
      throw error;
    },
    circle,
    refused,
    async namesakes() {
      const shown: ShownNamesake[] = [];
      for (const { namesake } of refused.list()) {
        const here = namesake === null ? null : await patients.byPseudonym(namesake.pseudonym);
        if (namesake !== null && here !== null)
          shown.push({ ...namesake, hereId: here.id, isDemoHere: here.isDemo });
      }
      return shown;
    },
    retryNamesakes: () => queue.add(() => receiver.retry(isNamesake)),
    stop,
  };
}
