/** As much of PouchDB as is used. Its own types name far more, and pull in Node's. */
export interface PouchDocument {
  _id: string;
  _rev?: string;
  _deleted?: boolean;
  _conflicts?: string[];
  [field: string]: unknown;
}

export interface PouchChange {
  id: string;
  seq: string | number;
}

export interface PouchFeed {
  on(event: 'change' | 'complete' | 'error', listener: (about: unknown) => void): PouchFeed;
  cancel(): void;
}

export interface PouchReplication extends PromiseLike<{ docs_written: number; last_seq: string | number }> {
  on(event: 'change', listener: (about: { docs_written: number }) => void): PouchReplication;
  cancel(): void;
}

export interface PouchDatabase {
  get(id: string, options?: { rev?: string; conflicts?: boolean }): Promise<PouchDocument>;
  put(document: PouchDocument): Promise<{ rev: string }>;
  /** A Blob in a browser, a Buffer in Node. */
  getAttachment(id: string, name: string): Promise<BlobPart>;
  remove(id: string, rev: string): Promise<unknown>;
  /** Of a server: its answer, whatever it is. */
  info(): Promise<{ error?: unknown }>;
  changes(options: {
    since: string | number;
    limit?: number;
    live?: boolean;
    return_docs?: boolean;
  }): PouchFeed & PromiseLike<{ results: PouchChange[]; last_seq: string | number }>;
  close(): Promise<void>;
  destroy(): Promise<unknown>;
}

export interface Pouch {
  new (name: string, options?: Record<string, unknown>): PouchDatabase;
  replicate(
    from: PouchDatabase,
    to: PouchDatabase,
    options: { batch_size: number; batches_limit: number },
  ): PouchReplication;
}
