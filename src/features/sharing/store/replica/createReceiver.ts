import type { Replica } from '#device/replica/openReplica';
import type { Repository } from '#device/storage/repository';
import { StorageProblem } from '#device/storage/storageProblem';
import { LibraryFull, mergeLibraries } from '#documents/library/libraryChanges';
import { emptyLibrary, isEmptyLibrary } from '#documents/library/libraryDocument';
import { withVersionBeside } from '#documents/patient/mergePatients';
import type { PatientDocument } from '#documents/patient/patientDocument';
import { contentHash } from '#documents/practice/contentHash';
import { mergeShared, type Beside, type SharedDocuments } from '#documents/practice/mergeShared';
import { sharedKinds, type SharedHead, type SharedKind } from '#documents/practice/sharedHead';
import { sharedPieceSchema, type SharedPiece } from '#documents/practice/sharedPiece';
import { standingOf } from '#documents/practice/standingOf';
import { z } from '#documents/schema/zod';
import { tombstoneName } from '#shell/receivedNotes';
import { noteTakenOut, type Circle } from './circle';
import { deletedRow, withVersion } from './createSender';
import type { LocalPatients } from './localPatients';
import { Refusal, type RefusalReason } from './refusal';
import type { Refused } from './refused';
import { openPiece, openShared, type OpenedShared } from './sealShared';
import { findShared, readShared, removeShared, type KeptShared } from './sharedDocuments';
import { feedKey, readRow, shortKey, writeRow, type SharedRow } from './sharedRow';

export interface ReceiverParts {
  repository: Repository;
  replica: Replica;
  patients: LocalPatients;
  circle: () => Promise<Circle>;
  /** To be called where somebody was taken out elsewhere. */
  onCircle: () => void;
  refused: Refused;
  /** Compares a document with what is shared, and sends it where that differs. */
  send: (kind: SharedKind, id: string) => Promise<void>;
  /** Whether a document of this device lies there. */
  isKnown: (replicaId: string) => Promise<boolean>;
  /** What lay there is there no more, or can't be used by anybody. */
  onSpoilt: (replicaId: string) => Promise<void>;
  now(): Date;
}

/** Takes in what arrived among the sealed copies. */
export interface Receiver {
  /**
   * Up to the last one; where it is interrupted, the next call begins with the documents that were not finished.
   *
   * @throws StorageProblem  where this device can't keep it
   * @throws TooManyRefused
   */
  receive(): Promise<void>;
  /**
   * Tries again what was refused for reasons that may have gone.
   *
   * @param isRetried  of which reason; where left out all that may go: after the list of colleagues changed
   */
  retry(isRetried?: (reason: RefusalReason) => boolean): Promise<void>;
}

/** Opened at once. */
const batch = 20;
/** Of pieces that wait for the others of their video. */
const waitingKey = (id: string) => `piece:${id}`;
const aliasOf = (patientId: string) => `alias:${patientId}`;

export function createReceiver(parts: ReceiverParts): Receiver {
  const { repository, replica, patients, circle, onCircle, refused, send, isKnown, onSpoilt, now } = parts;
  const rows = repository.replica;

  /** The record here of a patient, by the id that it has at the sender; null where there is none. */
  const localPatient = async (patientId: string) => {
    const known = await patients.byId(patientId);
    if (known !== null) return known;
    const alias = await rows.get(aliasOf(patientId));
    return typeof alias === 'string' ? patients.byId(alias) : null;
  };
  const isDeleted = async (kind: SharedKind, id: string) => (await readRow(rows, kind, id))?.of === null;

  /** The id that a record has here. */
  const placeOfPatient = async (head: SharedHead, patient: PatientDocument): Promise<string> => {
    if (patient.id !== head.id || head.patientId !== head.id) throw new Refusal('invalid');
    const known = await localPatient(head.id);
    if (known !== null) {
      if (known.pseudonym !== patient.pseudonym) throw new Refusal('of-another');
      return known.id;
    }
    const namesake = await patients.byPseudonym(patient.pseudonym);
    if (namesake === null) return head.id;
    const here = await repository.patients.find(namesake.id);
    if (here === null || namesake.isDemo || !isOnePerson(here, patient))
      throw new Refusal('namesake', {}, { pseudonym: patient.pseudonym, patientId: head.id, by: head.by });
    await rows.put(aliasOf(head.id), here.id);
    return here.id;
  };
  /** Refuses what is not of the patient that it names; null for what was deleted with its patient or session. */
  const placeOf = async (
    head: SharedHead,
    { kind, document, pseudonym }: KeptShared,
  ): Promise<string | null> => {
    if (kind === 'library') return head.id;
    if (kind === 'patient') return placeOfPatient(head, document);
    if (document.id !== head.id) throw new Refusal('invalid');
    const patient = await localPatient(head.patientId!);
    if (patient === null) {
      if (await isDeleted('patient', head.patientId!)) return null;
      throw new Refusal('waits');
    }
    if (kind === 'recording' || kind === 'piece') {
      const session = head.sessionId === null ? null : await repository.sessions.find(head.sessionId);
      if (session === null) {
        if (head.sessionId !== null && (await isDeleted('session', head.sessionId))) return null;
        throw new Refusal('waits');
      }
      if (session.patient !== patient.pseudonym) throw new Refusal('of-another');
    } else if (pseudonym !== patient.pseudonym) throw new Refusal('of-another');
    const here = await findShared(repository, kind, head.id);
    if (here !== null && here.pseudonym !== patient.pseudonym) throw new Refusal('of-another');
    if (here === null && kind === 'session' && (await repository.notes.read()).has(tombstoneName(head.id)))
      return null;
    return head.id;
  };

  const keepOther = async ({ patientId }: SharedHead, beside: Beside) => {
    const known = patientId === null ? null : await localPatient(patientId);
    if (known === null) throw new Refusal('waits'); // Nothing is replaced that is kept nowhere.
    const other = { ...beside, at: now().toISOString() };
    await repository.patients.update(known.id, (patient) => withVersionBeside(patient, other));
  };

  const takeDeleted = async ({ kind, id, patientId, replicaId }: SharedHead) => {
    if (kind === 'library' || patientId === null) throw new Refusal('invalid');
    const patient = await localPatient(patientId);
    const place = kind === 'patient' ? (patient?.id ?? id) : id;
    if (await isDeleted(kind, place)) return;
    const here = await findShared(repository, kind, place).catch(() => null);
    if (here !== null && here.pseudonym !== patient?.pseudonym) throw new Refusal('of-another');
    // First, so that the deletion here is not reported as this device's own.
    await writeRow(rows, kind, place, deletedRow({ replicaId, patientId }));
    await removeShared(repository, kind, place, now().toISOString());
    if (kind === 'piece') await rows.remove(waitingKey(place));
    if (kind === 'patient') await patients.refresh(place);
  };

  const takeVersion = async (head: SharedHead, there: KeptShared) => {
    const place = await placeOf(head, there);
    if (place === null || (await isDeleted(there.kind, place))) return;
    const { by } = await circle();
    const row = await readRow(rows, there.kind, place);
    const content = contentHash(there.kind, there.document);
    let ancestors: readonly string[] = [];
    let after = '';
    /** The version that is to be kept beside it first, so that nothing is lost where it ends between. */
    const waiting: { beside: Beside | null } = { beside: null };
    const kept = new Set<string>();
    const merged = <Kind extends SharedKind>(
      kind: Kind,
      here: SharedDocuments[Kind] | null,
      arrived: SharedDocuments[Kind],
    ): SharedDocuments[Kind] => {
      waiting.beside = null;
      ancestors = head.ancestors;
      after = content;
      if (here === null) return arrived;
      const version = contentHash(kind, here);
      const isShared = row?.content === version;
      const known = row === null ? [] : isShared ? row.ancestors : withVersion(row.ancestors, row.content);
      const standing = standingOf(
        { content: version, ancestors: known },
        { content, ancestors: head.ancestors },
      );
      ancestors = [...known, ...head.ancestors].reduce<string[]>(withVersion, []);
      after = version;
      if (standing === 'same' || standing === 'older') return here;
      ancestors = withVersion(ancestors, version);
      const authors = { here: isShared ? row.by : by, there: head.by };
      const both = mergeShared(kind, standing, [here, arrived], authors);
      if (both.beside !== null && !kept.has(both.beside.text)) {
        waiting.beside = both.beside;
        return here;
      }
      after = contentHash(kind, both.counts);
      return after === version ? here : both.counts;
    };
    await keep(repository, there, place, head, merged);
    while (waiting.beside !== null) {
      await keepOther(head, waiting.beside);
      kept.add(waiting.beside.text);
      await keep(repository, there, place, head, merged);
    }
    if (there.kind === 'patient') await patients.refresh(place);
    const others = ancestors.filter((one) => one !== content);
    const replicaId = row?.replicaId ?? head.replicaId;
    await writeRow(rows, there.kind, place, { ...sharedRow(head, place, content, others), replicaId });
    if (after !== content) await send(there.kind, place);
  };

  /** Keeps where a piece lies, and puts the video together once all of them have come. */
  const takePiece = async (head: SharedHead, piece: SharedPiece) => {
    if ((await placeOf(head, { kind: 'piece', document: piece, pseudonym: '' })) === null) return;
    const kept = await repository.recordings.find(piece.recordingId);
    if (kept === null) {
      if (await isDeleted('recording', piece.recordingId)) return;
      throw new Refusal('waits');
    }
    if (kept.facts.visitId !== head.sessionId) throw new Refusal('of-another');
    const known = await readRow(rows, 'piece', piece.id);
    if (known !== null) return; // What came first stays.
    if (kept.facts.video === null) await putTogether(head, piece, kept);
    await writeRow(rows, 'piece', piece.id, sharedRow(head, piece.id, contentHash('piece', piece), []));
  };
  const putTogether = async (head: SharedHead, piece: SharedPiece, kept: KeptRecording) => {
    const { keys } = await circle();
    // Each is looked at as it comes, so that a spoilt one is known at once.
    await openPiece(await replica.piece(head.replicaId), piece, keys);
    await rows.put(waitingKey(piece.id), { replicaId: head.replicaId, piece });
    const found = (await rows.list(waitingKey(`${piece.recordingId}:`))).flatMap(({ value }) => {
      const result = waitingPieceSchema.safeParse(value);
      return result.success && result.data.piece.of === piece.of ? [result.data] : [];
    });
    if (found.length < piece.of) return;
    found.sort((a, b) => a.piece.index - b.piece.index);
    const parts: Blob[] = [];
    for (const one of found) parts.push(await openPiece(await replica.piece(one.replicaId), one.piece, keys));
    const { recording, edition: expects } = kept;
    const video = new Blob(parts, { type: piece.type });
    await repository.keepTogether(null, [
      { recording, visitId: head.sessionId, fromVideo: piece.fromVideo, video, expects },
    ]);
    for (const one of found) await rows.remove(waitingKey(one.piece.id));
  };

  const take = async ({ head, document }: OpenedShared) => {
    if (await noteTakenOut(rows, head)) onCircle();
    if (document === null) return takeDeleted(head);
    let there: KeptShared;
    try {
      there = readShared(head.kind, document);
    } catch (cause) {
      throw new Refusal('invalid', { cause });
    }
    await (there.kind === 'piece' ? takePiece(head, there.document) : takeVersion(head, there));
  };

  const open = async (replicaId: string, sealed: string | null) => {
    const { keys, members } = await circle();
    return openShared(
      sealed,
      replicaId,
      keys,
      (key) => members.includes(key) || keys.some(({ recipient }) => recipient === key),
    );
  };

  /** All versions of some sealed copies, in the order in which they need each other. */
  const takeIn = async (ids: readonly string[]) => {
    const opened: OpenedLeaf[] = [];
    const reasons = new Map<string, Refusal>();
    const losers: OpenedLeaf[] = [];
    const spoilt: string[] = [];
    const openAll = async (id: string) => {
      const leaves = await replica.leaves(id);
      if (leaves.length === 0 && (await isKnown(id))) {
        reasons.set(id, new Refusal('gone-there'));
        spoilt.push(id);
      }
      // The one that counts last, so that it is what this device takes for the server's.
      for (const [index, { rev, sealed }] of [...leaves.entries()].reverse()) {
        try {
          opened.push({ id, rev, isWinner: index === 0, shared: await open(id, sealed) });
        } catch (error) {
          if (!(error instanceof Refusal)) throw error;
          reasons.set(id, error);
          if (index === 0 && spoils.has(error.reason)) spoilt.push(id);
        }
      }
    };
    const takeOne = async (leaf: OpenedLeaf) => {
      try {
        await take(leaf.shared);
        if (!leaf.isWinner) losers.push(leaf);
      } catch (error) {
        if (!(error instanceof Refusal)) throw error;
        reasons.set(leaf.id, error);
      }
    };
    await atOnce(ids.map((id) => () => openAll(id)));
    for (const kind of sharedKinds) {
      const ofKind = opened.filter(({ shared }) => shared.head.kind === kind);
      await atOnce(
        byDocument(ofKind).map((leaves) => async () => {
          for (const leaf of leaves) await takeOne(leaf);
        }),
      );
    }
    for (const { id, rev } of losers)
      if (!reasons.has(id)) await replica.drop(id, rev).catch(() => undefined);
    for (const id of ids) await refused.note(id, reasons.get(id) ?? null);
    for (const id of spoilt) await onSpoilt(id);
    return ids.length - reasons.size;
  };

  const retry = async (isRetried: (reason: Refusal['reason']) => boolean) => {
    for (let taken = 1; taken > 0;) {
      taken = 0;
      const waiting = refused.list().filter(({ reason }) => isRetried(reason));
      for (let from = 0; from < waiting.length; from += batch)
        taken += await takeIn(waiting.slice(from, from + batch).map(({ id }) => id));
      isRetried = (reason) => reason === 'waits'; // What was taken in may be what others waited for.
    }
  };

  return {
    async receive() {
      const kept = await rows.get(feedKey);
      let since = typeof kept === 'string' || typeof kept === 'number' ? kept : 0;
      let taken = 0;
      for (;;) {
        const next = await replica.changes(since, batch);
        if (next.ids.length === 0) break;
        taken += await takeIn([...new Set(next.ids)]);
        since = next.since;
        await rows.put(feedKey, since);
      }
      if (taken > 0) await retry((reason) => reason === 'waits');
    },
    retry: (isRetried = (reason) => reason !== 'gone-there' && reason !== 'garbage') => retry(isRetried),
  };
}

/** A version of a sealed copy, opened. */
interface OpenedLeaf {
  id: string;
  rev: string;
  isWinner: boolean;
  shared: OpenedShared;
}

/** What must be taken in one after another: versions of one document, all patients, all pieces of videos. */
function byDocument(leaves: readonly OpenedLeaf[]): OpenedLeaf[][] {
  const groups = new Map<string, OpenedLeaf[]>();
  for (const leaf of leaves) {
    const { kind, id } = leaf.shared.head;
    const key = kind === 'patient' || kind === 'piece' ? kind : id;
    groups.set(key, [...(groups.get(key) ?? []), leaf]);
  }
  return [...groups.values()];
}

/** Runs jobs at once, and throws what the first of them threw, once all are over. */
async function atOnce(jobs: readonly (() => Promise<void>)[]): Promise<void> {
  const results = await Promise.allSettled(jobs.map((job) => job()));
  for (const result of results) if (result.status === 'rejected') throw result.reason;
}

/** Reasons for which nobody can use what lies there. */
const spoils = new Set(['garbage', 'forged', 'no-member', 'other-place']);

type KeptRecording = NonNullable<Awaited<ReturnType<Repository['recordings']['find']>>>;

/** A piece that came before the others of its video. */
const waitingPieceSchema = z.strictObject({ replicaId: z.uuid(), piece: sharedPieceSchema });

/** What is known of a document as it arrived. */
function sharedRow(head: SharedHead, id: string, content: string, ancestors: string[]): SharedRow {
  const { replicaId, kind, patientId, by, recipients } = head;
  const sealedFor = recipients.map(shortKey);
  return { replicaId, of: { kind, id }, patientId, content, ancestors, by, sealedFor, edition: '' };
}

/**
 * Whether two records under one pseudonym are of one person: they have a plan or a session in common, or somebody signed
 * in one of them that it took over the other.
 */
function isOnePerson(here: PatientDocument, there: PatientDocument): boolean {
  const tookOver = ({ log }: PatientDocument, { id }: PatientDocument) =>
    log.some(({ what, about }) => what === 'taken' && about === id);
  if (tookOver(here, there) || tookOver(there, here)) return true;
  const ids = ({ plans, marks }: PatientDocument) => [
    ...plans.map(({ id }) => id),
    ...marks.map(({ visitId }) => visitId),
  ];
  const known = new Set(ids(here));
  return ids(there).some((id) => known.has(id));
}

/**
 * Keeps what `merged` makes of it, with nothing changed meanwhile.
 *
 * @throws Refusal  where a library can't be taken in
 */
async function keep(
  { library, replica, recordings, keepTogether }: Repository,
  there: KeptShared,
  place: string,
  { sessionId }: SharedHead,
  merged: <Kind extends SharedKind>(
    kind: Kind,
    here: SharedDocuments[Kind] | null,
    arrived: SharedDocuments[Kind],
  ) => SharedDocuments[Kind],
): Promise<void> {
  switch (there.kind) {
    case 'library':
      try {
        // Alone as well it has to be within bounds.
        await library.change((here) =>
          merged('library', isEmptyLibrary(here) ? null : here, mergeLibraries(emptyLibrary, there.document)),
        );
        return;
      } catch (cause) {
        if (cause instanceof LibraryFull) throw new Refusal('library-full', { cause });
        if (cause instanceof StorageProblem && cause.reason === 'damaged')
          throw new Refusal('library-damaged', { cause });
        throw cause;
      }
    case 'patient':
      return replica.change('patient', place, (here) => merged('patient', here, there.document));
    case 'plan':
      return replica.change('plan', place, (here) => merged('plan', here, there.document));
    case 'session':
      return replica.change('session', place, (here) => merged('session', here, there.document));
    case 'piece':
      return; // Kept once all of them have come.
    case 'recording': {
      for (let attempt = 1; ; attempt++) {
        const kept = await recordings.find(place);
        const recording = merged('recording', kept?.recording ?? null, there.document);
        if (recording === kept?.recording) return;
        const expects = kept?.edition ?? null;
        const video = kept === null ? null : ('stays' as const);
        const fromVideo = kept?.facts.fromVideo ?? 'impossible';
        try {
          await keepTogether(null, [{ recording, visitId: sessionId, fromVideo, video, expects }]);
          return;
        } catch (error) {
          if (!(error instanceof StorageProblem && error.reason === 'changed') || attempt === 5) throw error;
        }
      }
    }
  }
}
