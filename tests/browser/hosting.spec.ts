import { expect, test } from '@playwright/test';
import { securityHeaders } from '#tools/build/securityHeaders';
import { expectedFiles } from '#tools/commands/tools/hostedFiles';

test('npm start serves every kind of file with the headers of docs/nginx.conf', async ({ request }) => {
  for (const [path, type] of expectedFiles()) {
    const answer = await request.get(`./${path}`);
    expect(answer.status(), path).toBe(200);
    const headers = answer.headers();
    // nginx adds the letters' encoding, which the pages say themselves.
    expect(headers['content-type'], path).toMatch(new RegExp(type.replace(/(; charset=utf-8)?\$/, ''), 'i'));
    for (const [name, value] of Object.entries(securityHeaders))
      expect(headers[name.toLowerCase()], `${path}: ${name}`).toBe(value);
    expect(headers['access-control-allow-origin'], path).toBeUndefined();
  }
});

test('npm start answers 404 for what is not there, never with the start page', async ({ request }) => {
  for (const path of [
    'there-is-no-such-file',
    'models/blazepose-huge.bin',
    'assets/gone.js',
    '../package.json',
  ])
    expect((await request.get(`./${path}`)).status(), path).toBe(404);
});
