import { randomBytes, randomUUID } from 'node:crypto';
import { request } from 'node:http';
import { openReplica } from '#device/replica/openReplica';
import { startNginx, withLines } from '../startNginx';
import { PouchInNode } from './pouchInNode';
import { startReplicaServer } from './startReplicaServer';

/** `http2` is a line of its own from this version on. */
const firstWithHttp2Line = [1, 25, 1];
/** Longer than nginx waits for an answer where nothing says otherwise, ms. */
const quietMs = 62_000;
/** A piece of a video, and a sealed recording of the largest size that is sent, bytes (docs/deploy.md). */
const pieceBytes = 1_048_576;
const largestBytes = 7_300_000;

/**
 * Has two devices share through docs/practice-server/nginx.conf, in front of the tests' own server of the protocol,
 * and asks it for what it must refuse. Changed in it are the port, TLS and the server behind it.
 *
 * @returns  what does not hold, in sentences
 */
export async function practiceFaults(): Promise<string[]> {
  const server = await startReplicaServer('practice-one');
  const behind = new URL(server.address).origin;
  const nginx = await startNginx('docs/practice-server/nginx.conf', (own, { port, version }) =>
    withLines(own, {
      'listen 443 ssl;': `listen 127.0.0.1:${port};`,
      'ssl_certificate     /etc/nginx/tls/share.pem;': '',
      'ssl_certificate_key /etc/nginx/tls/share.key;': '',
      'http://couchdb:5984': behind,
      ...(hasHttp2Line(version) ? {} : { 'http2 on;': '' }),
    }),
  );
  try {
    return [...(await refusals(nginx.url)), ...(await sharingFaults(`${nginx.url}practice-one`))];
  } finally {
    await nginx.close();
    await server.stop();
  }
}

function hasHttp2Line(version: string): boolean {
  const numbers = /(\d+)\.(\d+)\.(\d+)/.exec(version)!.slice(1).map(Number);
  const at = numbers.findIndex((one, index) => one !== firstWithHttp2Line[index]);
  return at < 0 || numbers[at]! > firstWithHttp2Line[at]!;
}

async function refusals(url: string): Promise<string[]> {
  const expected: [method: string, path: string, status: number][] = [
    ['GET', 'practice-one', 200],
    ['GET', '', 404],
    ['GET', '_all_dbs', 404],
    ['GET', '_users/_all_docs', 404],
    ['GET', '_utils/', 404],
    ['GET', 'practice-one/../_all_dbs', 404],
    ['GET', 'practice-one/%2e%2e/_all_dbs', 404],
    ['DELETE', 'practice-one', 403],
    ['PUT', 'other', 404],
  ];
  const faults: string[] = [];
  for (const [method, path, status] of expected) {
    const answered = await ask(url, method, path);
    if (answered !== status)
      faults.push(`${method} /${path}: answered with ${answered} instead of ${status}`);
  }
  const tooLarge = await ask(url, 'POST', 'practice-one/_bulk_docs', 161 * 1024 * 1024);
  if (tooLarge !== 413) faults.push(`more than 160 MB at once is answered with ${tooLarge} instead of 413`);
  return faults;
}

/**
 * The status of an answer. The path goes out as it is, and a body is announced and never sent.
 *
 * @param bytes  how long the body is said to be
 */
function ask(url: string, method: string, path: string, bytes = 0): Promise<number> {
  const { hostname, port } = new URL(url);
  const headers = bytes === 0 ? {} : { 'Content-Length': bytes, 'Content-Type': 'application/json' };
  return new Promise((resolve, reject) => {
    const asked = request({ hostname, port, method, path: `/${path}`, headers }, (answer) => {
      resolve(answer.statusCode!);
      asked.destroy();
    });
    asked.on('error', reject);
    if (bytes === 0) asked.end();
    else asked.flushHeaders();
  });
}

async function sharingFaults(address: string): Promise<string[]> {
  const access = { address, user: '', password: '' };
  const [one, other] = [0, 1].map(() =>
    openReplica(PouchInNode, randomUUID(), { local: { adapter: 'memory' } }),
  );
  const stop = new AbortController();
  const round = async (replica: typeof one) => {
    while (await replica!.round(access, stop.signal));
  };
  const faults: string[] = [];
  try {
    const documents = Array.from({ length: 45 }, () => [randomUUID(), text(2_000)] as const);
    const largest = [randomUUID(), text(largestBytes)] as const;
    const piece = randomBytes(pieceBytes).toString('base64');
    for (const [id, sealed] of [...documents, largest]) await one!.put(id, sealed);
    const withPiece = randomUUID();
    await one!.put(withPiece, text(500), piece);
    await round(one);
    await round(other);
    for (const [id, sealed] of [...documents, largest])
      if ((await other!.leaves(id))[0]?.sealed !== sealed)
        faults.push(`a document of ${sealed.length} bytes did not arrive as it was`);
    const arrived = await other!.piece(withPiece);
    if (arrived === null || Buffer.from(await arrived.arrayBuffer()).toString('base64') !== piece)
      faults.push('a piece of a video did not arrive as it was');
    faults.push(...(await newsFaults()));
  } finally {
    stop.abort();
    await Promise.all([one!.destroy(), other!.destroy()]);
  }
  return faults;

  /** Whether a device hears of a change at once, and is not cut off where it waits for one. */
  async function newsFaults(): Promise<string[]> {
    let isHeard = false;
    const heard = other!.news(access, stop.signal).then(() => (isHeard = true));
    await new Promise((resolve) => setTimeout(resolve, quietMs));
    if (isHeard) return ['a device that waits for news is cut off where there is none'];
    await one!.put(randomUUID(), text(500));
    await round(one);
    const inTime = await Promise.race([
      heard,
      new Promise<false>((resolve) => setTimeout(() => resolve(false), 5_000)),
    ]);
    return inTime ? [] : ['a device does not hear of a change within 5 s'];
  }
}

/** As long as a sealed text, in base64. */
function text(length: number): string {
  return randomBytes(length)
    .toString('base64')
    .slice(0, length - (length % 4));
}
