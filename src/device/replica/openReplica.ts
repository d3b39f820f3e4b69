import { bytesType, guardedFetch, ServerAnswer, type ServerFault } from './guardedFetch';
import type { Pouch, PouchDatabase, PouchDocument } from './pouch';

/** One version of a sealed copy that nothing follows; several where two devices wrote at once. */
export interface Leaf {
  rev: string;
  /** Sealed, base64; null where it holds anything else. */
  sealed: string | null;
}

/** Where the practice's sealed copies are shared. */
export interface ServerAccess {
  /** Address of the database. */
  address: string;
  user: string;
  password: string;
}

/** Why a round with the server did not end: its answer, its status, or that this device is full. */
export type RoundFault = ServerFault | 'unauthorised' | 'no-database' | 'refused' | 'full' | 'other';

/** A round with the server that did not end; what was exchanged before stays, and the next one resumes there. */
export class RoundProblem extends Error {
  constructor(
    readonly fault: RoundFault,
    options?: ErrorOptions,
  ) {
    super(`The round did not end: ${fault}`, options);
    this.name = 'RoundProblem';
  }
}

/** Sealed copies on this device, which are replicated with a server; they are opened elsewhere. */
export interface Replica {
  /**
   * Writes a version after the one that counts; where there is none, the first one.
   *
   * @param piece  sealed bytes that belong to it, base64; null for none
   */
  put(id: string, sealed: string, piece?: string | null): Promise<void>;
  /** The sealed bytes that belong to it; null where there are none. */
  piece(id: string): Promise<Blob | null>;
  /** The one that counts first; none where it was deleted on the server. */
  leaves(id: string): Promise<Leaf[]>;
  /** Drops a version that is in another by now. */
  drop(id: string, rev: string): Promise<void>;
  /** Ids whose versions changed, oldest change first. */
  changes(since: string | number, limit: number): Promise<{ ids: string[]; since: string | number }>;
  /**
   * Sends everything, and fetches until both have the same, or a few hundred documents have come.
   *
   * @returns  whether there is more to fetch, once these were looked at
   * @throws RoundProblem
   */
  round(server: ServerAccess, signal: AbortSignal): Promise<boolean>;
  /**
   * Resolves once the server has something new, or can't be asked.
   *
   * @param signal  ends the waiting
   */
  news(server: ServerAccess, signal: AbortSignal): Promise<void>;
  close(): Promise<void>;
  /** Deletes the sealed copies from this device. */
  destroy(): Promise<void>;
}

/** What PouchDB gets in place of an answer that was not used. */
const notUsed = 'not_used';
/** Name of the attachment with a piece of a video. */
const pieceName = 'piece';
/** Documents that go over the line at once: few, since a recording may have megabytes. */
const batch = { batch_size: 20, batches_limit: 2 };
/** Fetched before they are looked at: a server may have any number that are of no use. */
const mostAtOnce = 400;

interface Options {
  /** Passed to PouchDB, for tests. */
  local?: Record<string, unknown>;
  fetch?: typeof fetch;
}

/** @param PouchDB  with its adapters and replication */
export function openReplica(
  PouchDB: Pouch,
  name: string,
  { local = {}, fetch: fetchIt }: Options = {},
): Replica {
  // Contents of earlier versions are deleted, and those before the last hundred are not remembered.
  const database = new PouchDB(name, { auto_compaction: true, revs_limit: 100, ...local });
  const fetchGuarded = guardedFetch(fetchIt ?? ((...asked) => fetch(...asked)));
  /** Why an answer of this round was not used. */
  let lastFault: ServerFault | null = null;
  const fetchNoted: typeof fetch = (...asked) =>
    fetchGuarded(...asked).catch((error: unknown) => {
      if (!(error instanceof ServerAnswer)) throw error;
      lastFault = error.fault;
      // PouchDB leaves some of its own promises alone where fetching rejects.
      return new Response(JSON.stringify({ error: notUsed, reason: error.fault }), { status: 503 });
    });
  /** Up to where the server was read. */
  let seen: string | number = 'now';
  let remote: { server: ServerAccess; database: PouchDatabase } | null = null;
  const remoteOf = (server: ServerAccess): PouchDatabase => {
    if (remote !== null && JSON.stringify(remote.server) === JSON.stringify(server)) return remote.database;
    const { address, user: username, password } = server;
    const auth = username === '' ? {} : { auth: { username, password } };
    remote = {
      server,
      database: new PouchDB(address, { adapter: 'http', skip_setup: true, fetch: fetchNoted, ...auth }),
    };
    return remote.database;
  };
  const find = (id: string, options: { rev?: string; conflicts?: boolean }) =>
    database.get(id, options).catch((error: unknown) => {
      if (statusOf(error) === 404) return null;
      throw error;
    });
  const replicate = (from: PouchDatabase, to: PouchDatabase, signal: AbortSignal, most = Infinity) => {
    const replication = PouchDB.replicate(from, to, batch);
    const cancel = () => replication.cancel();
    signal.addEventListener('abort', cancel);
    replication.on('change', ({ docs_written: count }) => {
      if (count >= most) cancel();
    });
    return Promise.resolve(replication).finally(() => signal.removeEventListener('abort', cancel));
  };

  return {
    async put(id, sealed, piece = null) {
      const attached = { [pieceName]: { content_type: bytesType, data: piece } };
      for (let attempt = 1; ; attempt++) {
        const before = await find(id, {});
        try {
          const after = before === null ? {} : { _rev: before._rev! };
          const beside = piece === null ? {} : { _attachments: attached };
          await database.put({ _id: id, ...after, ...beside, sealed });
          return;
        } catch (error) {
          if (statusOf(error) !== 409 || attempt === 5) throw error; // A version arrived meanwhile.
        }
      }
    },
    async piece(id) {
      try {
        return new Blob([await database.getAttachment(id, pieceName)]);
      } catch (error) {
        if (statusOf(error) === 404) return null;
        throw error;
      }
    },
    async leaves(id) {
      const winner = await find(id, { conflicts: true });
      if (winner === null) return [];
      const others = await Promise.all((winner._conflicts ?? []).map((rev) => find(id, { rev })));
      return [winner, ...others.filter((one) => one !== null)].map(leafOf);
    },
    async drop(id, rev) {
      await database.remove(id, rev);
    },
    async changes(since, limit) {
      const { results, last_seq } = await database.changes({ since, limit });
      return { ids: results.map(({ id }) => id), since: last_seq };
    },
    async round(server, signal) {
      lastFault = null;
      try {
        const there = remoteOf(server);
        if ((await there.info()).error === notUsed) throw new ServerAnswer(lastFault ?? 'network');
        await replicate(database, there, signal);
        const { last_seq, docs_written: count } = await replicate(there, database, signal, mostAtOnce);
        seen = last_seq;
        return count >= mostAtOnce;
      } catch (error) {
        if (signal.aborted) return false;
        throw new RoundProblem(lastFault ?? faultOf(error), { cause: error });
      }
    },
    news: (server, signal) =>
      new Promise<void>((resolve) => {
        if (signal.aborted) return resolve();
        const feed = remoteOf(server).changes({ since: seen, live: true, return_docs: false });
        const end = () => {
          signal.removeEventListener('abort', end);
          feed.cancel();
          resolve();
        };
        signal.addEventListener('abort', end);
        feed.on('change', end).on('error', end);
        feed.then(undefined, () => undefined);
      }),
    close: () => database.close(),
    async destroy() {
      await database.destroy();
    },
  };
}

function leafOf({ _rev = '', sealed, ...rest }: PouchDocument): Leaf {
  const isOurs = Object.keys(rest).every((field) => ['_id', '_conflicts', '_attachments'].includes(field));
  return { rev: _rev, sealed: typeof sealed === 'string' && isOurs ? sealed : null };
}

function statusOf(error: unknown): number | null {
  const { status } = (error ?? {}) as { status?: unknown };
  return typeof status === 'number' ? status : null;
}

function faultOf(error: unknown): RoundFault {
  const status = statusOf(error);
  if (status === 401 || status === 403) return 'unauthorised';
  if (status === 404) return 'no-database';
  const text = error instanceof Error ? `${error.name} ${error.message}` : JSON.stringify(error);
  if (/quota|QuotaExceeded|no space/i.test(text)) return 'full';
  return status !== null && status >= 400 && status < 500 ? 'refused' : 'other';
}
