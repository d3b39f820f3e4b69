import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterAll, afterEach, describe, expect, it, vi } from 'vitest';
import { openReplica } from '#device/replica/openReplica';
import { nobody, withColleague, type People } from '#documents/practice/peopleNote';
import {
  createSharing,
  type Sharing,
  type SharingWorld,
} from '#features/sharing/store/replica/createSharing';
import { newKeyPair } from '#shell/seal';
import { PouchInNode } from '#tools/commands/tools/practice/pouchInNode';
import { startReplicaServer, type ReplicaServer } from '#tools/commands/tools/practice/startReplicaServer';
import { createTestDevice } from '../../../../../support/openTestRepository';
import { inventedPatient, inventedSession } from '../../../../../support/practice/invented';
import { testLog } from '../../../../../support/testLog';

const servers: ReplicaServer[] = [];
const hostile: Server[] = [];
const started: Sharing[] = [];
afterEach(async () => {
  for (const sharing of started.splice(0)) await sharing.stop();
});
afterAll(async () => {
  await Promise.all(servers.map((server) => server.stop()));
  for (const server of hostile) {
    server.closeAllConnections();
    server.close();
  }
});
async function startServer() {
  const server = await startReplicaServer();
  servers.push(server);
  return server;
}

const [ownKey, theirKey] = await Promise.all([newKeyPair(), newKeyPair()]);
const access = { user: '', password: '', scope: 'records' as const };
let names = 0;

async function deviceOf(
  initials: string,
  {
    key = ownKey,
    other = theirKey,
    ...change
  }: Partial<SharingWorld> & { key?: typeof ownKey; other?: typeof ownKey } = {},
) {
  const kept = createTestDevice();
  const repository = await kept.open();
  const people: People = withColleague(
    { ...nobody, initials },
    { initials: 'XX', key: other.recipient },
    '2026-05-06T07:08:09.000Z',
  );
  const name = `sharing-${++names}`;
  const world: SharingWorld = {
    openRepository: () => Promise.resolve({ repository, problem: null }),
    openReplica: () => Promise.resolve(openReplica(PouchInNode, name, { local: { adapter: 'memory' } })),
    readPeople: () => Promise.resolve(people),
    readKeys: () => Promise.resolve([key]),
    log: testLog(repository),
    allowed: ['http://127.0.0.1'],
    newId: () => crypto.randomUUID(),
    now: () => new Date('2026-05-06T07:08:09.000Z'),
    pause: (_, signal) =>
      new Promise((resolve) => {
        const timer = setTimeout(resolve, 20);
        signal.addEventListener('abort', () => {
          clearTimeout(timer);
          resolve();
        });
      }),
    ...change,
  };
  const open = () => {
    const sharing = createSharing(world);
    started.push(sharing);
    return sharing;
  };
  return { repository, sharing: open(), open };
}

function until(
  sharing: Sharing,
  isSo: (state: ReturnType<Sharing['store']['getState']>) => boolean,
): Promise<void> {
  return new Promise((resolve) => {
    if (isSo(sharing.store.getState())) return resolve();
    const stop = sharing.store.subscribe((state) => {
      if (!isSo(state)) return;
      stop();
      resolve();
    });
  });
}
const allowedAt = ({ address }: { address: string }) => ({ allowed: [new URL(address).origin] });

describe('createSharing(world)', () => {
  it('is off before somebody starts it, and shares from then on in the background, until it is stopped', async () => {
    const server = await startServer();
    const [ab, kn] = await Promise.all([
      deviceOf('AB', allowedAt(server)),
      deviceOf('KN', { key: theirKey, other: ownKey, ...allowedAt(server) }),
    ]);
    await ab.sharing.resume();
    expect(ab.sharing.store.getState().state).toBe('off');
    await ab.sharing.start({ ...access, address: server.address });
    await kn.sharing.start({ ...access, address: server.address });
    await ab.repository.patients.add(inventedPatient('Blue Heron 7'));
    const session = inventedSession('Blue Heron 7');
    await ab.repository.sessions.save(session);
    const arrived = new Promise<void>((resolve) => {
      kn.repository.subscribe((change) => {
        if (change.kind === 'sessions' && change.id === session.id) resolve();
      });
    });
    await arrived;
    await kn.sharing.stop();
    expect(kn.sharing.store.getState()).toMatchObject({ state: 'off', settings: { isOn: false } });
    await kn.open().resume();
    expect((await kn.repository.sessions.list()).found).toEqual([session]);

    await until(ab.sharing, ({ state }) => state === 'up-to-date');
    const second = ab.open(); // Another tab of the same program.
    await second.resume();
    expect(second.store.getState()).toMatchObject({ state: 'elsewhere', settings: { isOn: true } });
  });

  it.each([
    [
      'an address that the build does not allow',
      { address: 'https://elsewhere.example/practice' },
      {},
      /may not connect/,
    ],
    ['no key', {}, { readKeys: () => Promise.resolve([]) }, /no key/],
    ['no initials', {}, { readPeople: () => Promise.resolve(nobody) }, /initials/],
  ])('does not start with %s', async (_, change, world, sentence) => {
    const { sharing, repository } = await deviceOf('AB', world);
    await sharing.start({ ...access, address: 'http://127.0.0.1/practice', ...change });
    expect(sharing.store.getState()).toMatchObject({
      state: 'off',
      sentence: expect.stringMatching(sentence),
    });
    expect(await repository.replica.list('')).toEqual([]);
  });

  it('waits while the line is cut, and goes on by itself', async () => {
    const server = await startServer();
    const { sharing, repository } = await deviceOf('AB', allowedAt(server));
    server.cutAfter(0);
    await sharing.start({ ...access, address: server.address });
    await until(sharing, ({ state }) => state === 'waiting');
    expect(sharing.store.getState().sentence).toMatch(/does not answer/);
    await repository.patients.add(inventedPatient('Blue Heron 7'));
    server.mend();
    await until(sharing, ({ state, sentence }) => state === 'up-to-date' && sentence === null);
    await until(sharing, ({ lastAt }) => lastAt !== null);
    const { doc_count } = (await (await fetch(server.address)).json()) as { doc_count: number };
    expect(doc_count).toBe(1);
  });

  it.each([
    ['a page instead of a database', 200, '<html>', /not what such a server says/],
    ['no such database', 404, '{"error":"not_found","reason":"missing"}', /no such database/],
    ['another password', 401, '{"error":"unauthorized","reason":"no"}', /user and password/],
    ['a fault of its own', 500, '{"error":"internal","reason":"no"}', /fault of its own/],
  ])('says what is wrong where the server has %s', async (_, status, text, sentence) => {
    const address = await serve((answer) => {
      answer.statusCode = status;
      answer.end(text);
    });
    const { sharing } = await deviceOf('AB', allowedAt({ address }));
    await sharing.start({ ...access, address });
    await until(sharing, ({ state }) => state === 'waiting');
    expect(sharing.store.getState().sentence).toMatch(sentence);
  });

  it('names a patient whose pseudonym is used for somebody else, and makes them one where that is signed', async () => {
    const server = await startServer();
    const [ab, kn] = await Promise.all([
      deviceOf('AB', allowedAt(server)),
      deviceOf('KN', { key: theirKey, other: ownKey, ...allowedAt(server) }),
    ]);
    const changedAt = '2026-03-01T04:05:06.000Z';
    const heron = inventedPatient('Blue Heron 7', { goals: 'Stairs', changedAt });
    await ab.repository.patients.add(heron);
    await kn.repository.patients.add(inventedPatient('Blue Heron 7'));
    await ab.sharing.start({ ...access, address: server.address });
    await kn.sharing.start({ ...access, address: server.address });
    await until(kn.sharing, ({ namesakes }) => namesakes.length > 0);
    const { namesakes, refused } = kn.sharing.store.getState();
    expect(namesakes).toMatchObject([{ pseudonym: 'Blue Heron 7', patientId: heron.id, by: 'AB' }]);
    expect(refused).toEqual([]);
    await kn.sharing.mergeNamesake(namesakes[0]!);
    expect(kn.sharing.store.getState()).toMatchObject({ namesakes: [], sentence: null });
    const records = async () =>
      Promise.all(
        [ab, kn].map(async ({ repository }) => {
          const { found } = await repository.patients.list();
          return found.map(({ goals, log }) => [goals, log.map(({ what, about }) => [what, about])]);
        }),
      );
    await vi.waitFor(async () => {
      const one = [['Stairs', [['taken', heron.id]]]];
      expect(await records()).toEqual([one, one]);
    }, 5000);
  });

  it('stops by itself where 100,000 documents are not the practice’s, and does not begin again unasked', async () => {
    let served = 0;
    const total = 100_000;
    const address = await serve((answer, asked, body) => {
      const { pathname, searchParams } = new URL(asked.url!, 'http://localhost');
      const say = (data: unknown, status = 200) => {
        answer.statusCode = status;
        answer.end(JSON.stringify(data));
      };
      if (pathname.endsWith('/_changes')) {
        const since = Number(searchParams.get('since') ?? 0);
        const upTo = Math.min(total, since + Number(searchParams.get('limit') ?? 25));
        const results = Array.from({ length: upTo - since }, (_, at) => ({
          seq: since + at + 1,
          id: `document-${since + at + 1}`,
          changes: [{ rev: '1-aaaa' }],
        }));
        return say({ results, last_seq: upTo });
      }
      if (pathname.endsWith('/_bulk_get')) {
        const { docs } = JSON.parse(body) as { docs: { id: string }[] };
        served += docs.length;
        const results = docs.map(({ id }) => ({
          id,
          docs: [
            { ok: { _id: id, _rev: '1-aaaa', _revisions: { start: 1, ids: ['aaaa'] }, sealed: 'AAAA' } },
          ],
        }));
        return say({ results });
      }
      if (pathname.endsWith('/_revs_diff')) return say({});
      if (pathname.includes('/_local/') && asked.method === 'PUT')
        return say({ ok: true, id: pathname.slice('/practice/'.length), rev: '0-1' }, 201);
      if (pathname.includes('/_local/')) return say({ error: 'not_found', reason: 'missing' }, 404);
      return say({ db_name: 'practice', update_seq: total, doc_count: total });
    });
    const { sharing, repository, open } = await deviceOf('AB', allowedAt({ address }));
    await repository.patients.add(inventedPatient('Blue Heron 7'));
    await sharing.start({ ...access, address });
    await until(sharing, ({ state }) => state === 'stopped');
    expect(sharing.store.getState()).toMatchObject({
      sentence: expect.stringMatching(/500 documents one after another/),
      refused: [{ reason: 'garbage', count: 500 }],
    });
    expect(served).toBeLessThan(1500);
    expect((await repository.patients.list()).found).toHaveLength(1);
    const again = open();
    await again.resume();
    expect(again.store.getState().state).toBe('off');
  });
});

async function serve(
  handler: (
    answer: import('node:http').ServerResponse,
    asked: import('node:http').IncomingMessage,
    body: string,
  ) => void,
): Promise<string> {
  const server = createServer((asked, answer) => {
    let body = '';
    asked.on('data', (piece: Buffer) => (body += piece.toString()));
    asked.on('end', () => handler(answer, asked, body));
  });
  hostile.push(server);
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return `http://127.0.0.1:${(server.address() as AddressInfo).port}/practice`;
}
