import { mkdtempSync, rmSync } from 'node:fs';
import { createServer as createHttpServer, type RequestListener } from 'node:http';
import { connect, createServer, type AddressInfo, type Server, type Socket } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { replicationHandler } from './pouchInNode';

export interface ReplicaServer {
  /** Of the practice's database, through the line that can be cut. */
  address: string;
  /** The folder in which the server keeps everything. */
  folder: string;
  /** Cuts the line once that many bytes have come from the server; it stays cut until mend(). */
  cutAfter(bytes: number): void;
  mend(): void;
  /** Whether the line was cut since the last mend(). */
  isCut(): boolean;
  stop(): Promise<void>;
}

/**
 * A server of the Apache CouchDB replication protocol on loopback, from npm (express-pouchdb over LevelDB), behind a line
 * that can be cut. Of CouchDB it lacks
 * users and rights, clustering, purging, compaction by itself, and limits of size.
 */
export async function startReplicaServer(database = 'practice'): Promise<ReplicaServer> {
  const folder = mkdtempSync(join(tmpdir(), 'overfoot-replica-'));
  const http = createHttpServer(withCors(replicationHandler(folder)));
  const behind = await listen(http);
  const sockets = new Set<Socket>();
  let left = Infinity;
  const cut = () => {
    left = 0;
    for (const socket of sockets) socket.destroy();
  };
  const line = createServer((client) => {
    if (left <= 0) return client.destroy();
    const server = connect(behind, '127.0.0.1');
    for (const socket of [client, server]) {
      sockets.add(socket);
      socket.on('close', () => {
        sockets.delete(socket);
        client.destroy();
        server.destroy();
      });
      socket.on('error', () => undefined);
    }
    client.pipe(server);
    server.on('data', (bytes: Buffer) => {
      left -= bytes.length;
      if (left > 0) client.write(bytes);
      else {
        client.write(bytes.subarray(0, Math.max(0, bytes.length + left)));
        cut();
      }
    });
  });
  const port = await listen(line);
  const address = `http://127.0.0.1:${port}/${database}`;
  const made = await fetch(address, { method: 'PUT' });
  if (!made.ok) throw new Error(`The database was not made: ${made.status}`);
  return {
    address,
    folder,
    cutAfter: (bytes) => {
      left = bytes;
      if (left <= 0) cut();
    },
    mend: () => {
      left = Infinity;
    },
    isCut: () => left <= 0,
    async stop() {
      cut();
      await Promise.all([close(line), close(http)]);
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

function listen(server: Server): Promise<number> {
  return new Promise((resolve) =>
    server.listen(0, '127.0.0.1', () => resolve((server.address() as AddressInfo).port)),
  );
}

function close(server: Server | import('node:http').Server): Promise<void> {
  return new Promise((resolve) => {
    if ('closeAllConnections' in server) server.closeAllConnections();
    server.close(() => resolve());
  });
}

/** Lets pages of other origins ask, as CouchDB does where its `[cors]` names them (docs/deploy.md). */
function withCors(handler: RequestListener): RequestListener {
  return (asked, answer) => {
    const { origin } = asked.headers;
    if (origin !== undefined) {
      answer.setHeader('Access-Control-Allow-Origin', origin);
      answer.setHeader('Access-Control-Allow-Headers', 'accept, authorization, content-type');
      answer.setHeader('Access-Control-Allow-Methods', 'GET, PUT, POST, DELETE');
    }
    if (asked.method !== 'OPTIONS') return handler(asked, answer);
    answer.statusCode = 204;
    answer.end();
  };
}
