import { isProblem } from '#core/problem';
import type { Replica } from '#device/replica/openReplica';
import type { Repository } from '#device/storage/repository';
import { StorageProblem } from '#device/storage/storageProblem';
import { contentHash } from '#documents/practice/contentHash';
import {
  isInScope,
  sharedBounds,
  sharedKinds,
  type SharedKind,
  type SharedScope,
} from '#documents/practice/sharedHead';
import { pieceOf } from '#documents/practice/sharedPiece';
import { isForAll, type Circle } from './circle';
import type { LocalPatients } from './localPatients';
import { sealPiece, sealShared } from './sealShared';
import { findShared, listPieces, readPiece } from './sharedDocuments';
import { listRows, readRow, shortKey, writeRow, type SharedRow } from './sharedRow';

export interface SenderParts {
  repository: Repository;
  replica: Replica;
  patients: LocalPatients;
  circle: () => Promise<Circle>;
  scope: SharedScope;
  newId(): string;
  now(): Date;
}

/** Seals what is kept here, and writes it to the sealed copies; what the server has already is not sent again. */
export interface Sender {
  /** Compares one document with what is shared, and sends it where that differs. */
  send(kind: SharedKind, id: string): Promise<void>;
  /** The same for everything, what was deleted meanwhile included. */
  sendAll(): Promise<void>;
  /** Sends a document again, since what is on the server in its place can't be used. */
  sendAgain(row: SharedRow): Promise<void>;
}

export function createSender({
  repository,
  replica,
  patients,
  circle,
  scope,
  newId,
  now,
}: SenderParts): Sender {
  const rows = repository.replica;

  const sendDeleted = async (kind: SharedKind, id: string, row: SharedRow) => {
    if (!(await isGone(repository, kind, id))) return;
    // Where everything on this device was deleted meanwhile, nothing is known of it: that is no word to colleagues.
    if ((await readRow(rows, kind, id)) === null) return;
    const { own, by, members, takenOut } = await circle();
    const sealed = await sealShared(
      {
        replicaId: row.replicaId,
        recipients: [...members],
        takenOut: [...takenOut],
        sealedAt: now().toISOString(),
        by,
        kind,
        id,
        patientId: row.patientId,
        sessionId: null,
        ancestors: [],
      },
      null,
      own,
    );
    await replica.put(row.replicaId, sealed);
    await writeRow(rows, kind, id, deletedRow(row));
  };

  const sendNow = async (kind: SharedKind, id: string, edition: string) => {
    const row = await readRow(rows, kind, id);
    if (row?.of === null) return; // What was deleted stays deleted.
    const kept = await findShared(repository, kind, id);
    if (kept === null) return row === null ? undefined : sendDeleted(kind, id, row);
    const patient = kept.pseudonym === null ? null : await patients.byPseudonym(kept.pseudonym);
    if (kept.pseudonym !== null && (patient === null || patient.isDemo)) return;
    const patientId = patient?.id ?? null;
    const everybody = await circle();
    const content = contentHash(kind, kept.document);
    const isSame = row?.content === content;
    const isSettled = isSame || kind === 'piece'; // A piece of another video stays as it came first.
    if (row !== null && isSettled && isForAll(everybody, row.sealedFor)) {
      if (row.edition !== edition && edition !== '') await writeRow(rows, kind, id, { ...row, edition });
      return;
    }
    const replicaId = row?.replicaId ?? newId();
    const by = row !== null && isSame ? row.by : everybody.by;
    const ancestors = row === null ? [] : isSame ? row.ancestors : withVersion(row.ancestors, row.content);
    const facts = {
      replicaId,
      recipients: [...everybody.members],
      takenOut: [...everybody.takenOut],
      by,
      kind,
      id,
    };
    const sealed = await sealShared(
      {
        ...facts,
        sealedAt: now().toISOString(),
        patientId,
        sessionId: await sessionOf(repository, kind, id),
        ancestors,
      },
      kept.document,
      everybody.own,
    );
    const bytes = kind === 'piece' ? await readPiece(repository, id) : null;
    const piece = bytes === null ? null : await sealPiece(everybody.members, bytes.blob);
    await replica.put(replicaId, sealed, piece);
    await writeRow(rows, kind, id, {
      replicaId,
      of: { kind, id },
      patientId,
      content,
      ancestors,
      by,
      sealedFor: everybody.members.map(shortKey),
      edition,
    });
  };
  /** What can't be read, or is too large, stays on this device alone. */
  const sendOne = async (kind: SharedKind, id: string, edition = '') => {
    try {
      await sendNow(kind, id, edition);
    } catch (error) {
      const isOfDocument =
        error instanceof StorageProblem
          ? error.reason === 'damaged' || error.reason === 'missing'
          : isProblem(error, 'file', 'session', 'recording', 'plan');
      if (!isOfDocument) throw error;
    }
  };

  return {
    async send(kind, id) {
      if (isInScope(kind, scope)) await sendOne(kind, id);
      if (kind !== 'recording' || !isInScope('piece', scope)) return;
      for (const piece of await listPieces(repository, id)) await sendOne('piece', piece.id, piece.edition);
      for (const { of } of await listRows(rows))
        if (of?.kind === 'piece' && pieceOf(of.id).recordingId === id) await sendOne('piece', of.id);
    },
    async sendAll() {
      const known = new Map<string, SharedRow>();
      for (const row of await listRows(rows))
        if (row.of !== null) known.set(`${row.of.kind}:${row.of.id}`, row);
      const everybody = await circle();
      for (const kind of sharedKinds) {
        const kept = kind === 'piece' ? await listPieces(repository) : await rows.editions(kind);
        const ids = new Set(kept.map(({ id }) => id));
        for (const { of } of known.values())
          if (of?.kind === kind && !ids.has(of.id)) await sendOne(kind, of.id);
        if (!isInScope(kind, scope)) continue;
        for (const { id, edition } of kept) {
          const row = known.get(`${kind}:${id}`);
          const isSent = row !== undefined && row.edition === edition && isForAll(everybody, row.sealedFor);
          if (!isSent || edition === '') await sendOne(kind, id, edition);
        }
      }
    },
    async sendAgain({ of, ...row }) {
      if (of === null) return;
      await writeRow(rows, of.kind, of.id, { ...row, of, sealedFor: [] });
      await sendOne(of.kind, of.id);
    },
  };
}

/** Of a document that was deleted: only that it was, and where it lay. */
export function deletedRow({ replicaId, patientId }: Pick<SharedRow, 'replicaId' | 'patientId'>): SharedRow {
  return { replicaId, of: null, patientId, content: '', ancestors: [], by: '', sealedFor: [], edition: '' };
}

/** Versions with another one, which is the latest. */
export function withVersion(ancestors: readonly string[], content: string): string[] {
  return [...ancestors.filter((one) => one !== content), content].slice(-sharedBounds.ancestors);
}

async function isGone({ replica, recordings }: Repository, kind: SharedKind, id: string): Promise<boolean> {
  if (kind === 'library') return false; // It is changed, and never deleted.
  if (kind === 'recording') return (await recordings.find(id)) === null;
  if (kind === 'piece') return (await recordings.find(pieceOf(id).recordingId)) === null;
  return (await replica.find(kind, id)) === null;
}

async function sessionOf({ recordings }: Repository, kind: SharedKind, id: string): Promise<string | null> {
  if (kind !== 'recording' && kind !== 'piece') return null;
  return (await recordings.facts([pieceOf(id).recordingId]))[0]?.visitId ?? null;
}
