import { createServer, type RequestListener, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterEach, describe, expect, it } from 'vitest';
import { guardedFetch } from '#device/replica/guardedFetch';

const servers: Server[] = [];
afterEach(() => {
  for (const server of servers.splice(0)) {
    server.closeAllConnections();
    server.close();
  }
});

async function serve(handler: RequestListener): Promise<string> {
  const server = createServer(handler);
  servers.push(server);
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
}

const guarded = guardedFetch(fetch, { bytes: 1000 });

describe('guardedFetch(fetchIt, { bytes, silenceMs })', () => {
  it('gives the answer with its status, and passes the request on', async () => {
    const address = await serve((asked, answer) => {
      answer.statusCode = 418;
      answer.end(JSON.stringify({ method: asked.method, key: asked.headers['x-key'] }));
    });
    const answer = await guarded(address, { method: 'POST', body: '{}', headers: { 'X-Key': 'abc' } });
    expect([answer.status, await answer.json()]).toEqual([418, { method: 'POST', key: 'abc' }]);
  });

  it.each(['<html>', '', '7', 'null', '{"cut":'])(
    'refuses %j, which is not what such a server says',
    async (text) => {
      const address = await serve((_, answer) => void answer.end(text));
      await expect(guarded(address)).rejects.toMatchObject({ fault: 'unreadable' });
    },
  );

  it('stops reading where more is sent than the bound', async () => {
    let sent = 0;
    const address = await serve((_, answer) => {
      const more = () => {
        for (let isTaken = true; isTaken && !answer.destroyed; sent++)
          isTaken = answer.write(' '.repeat(500));
      };
      answer.on('drain', more);
      more();
    });
    await expect(guarded(address)).rejects.toMatchObject({ fault: 'too-large' });
    expect(sent * 500).toBeLessThan(50_000_000);
  });

  it('stops waiting for a server that falls silent', async () => {
    const address = await serve((_, answer) => void answer.write('{'));
    const impatient = guardedFetch(fetch, { silenceMs: 50 });
    await expect(impatient(address)).rejects.toMatchObject({ fault: 'network' });
  });

  it('gives the bytes of what is attached as they are', async () => {
    const address = await serve((_, answer) => {
      answer.setHeader('Content-Type', 'application/octet-stream');
      answer.end(Buffer.from([0, 255, 7]));
    });
    const bytes = await (await guarded(address)).arrayBuffer();
    expect([...new Uint8Array(bytes)]).toEqual([0, 255, 7]);
  });

  it('follows no redirect', async () => {
    const elsewhere = await serve((_, answer) => void answer.end('{}'));
    const address = await serve((_, answer) => {
      answer.writeHead(302, { Location: elsewhere });
      answer.end();
    });
    await expect(guarded(address)).rejects.toMatchObject({ fault: 'network' });
  });

  it('ends with the signal of who asked', async () => {
    const address = await serve((_, answer) => void answer.write('{'));
    const abort = new AbortController();
    const asked = guarded(address, { signal: abort.signal });
    abort.abort();
    await expect(asked).rejects.toMatchObject({ name: 'AbortError' });
  });
});
