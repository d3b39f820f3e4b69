import { chromium } from '@playwright/test';
import { securityHeaders } from '../build/securityHeaders';
import { ensureBuilt } from './tools/ensureBuilt';
import { browserSwitches, findBrowser } from './tools/findBrowser';
import { expectedFiles } from './tools/hostedFiles';
import { practiceFaults } from './tools/practice/practiceFaults';
import { projectRoot } from './tools/projectRoot';
import { runCommand } from './tools/runCommand';
import { startNginx, withLines } from './tools/startNginx';

/**
 * Tests docs/nginx.conf with the nginx of this machine: headers, types, caching, refusals, and the pages in a
 * browser; then docs/practice-server/nginx.conf, with devices that share through it.
 */
await runCommand(async () => {
  ensureBuilt();
  const { url, version, close } = await startNginx('docs/nginx.conf', (own, { port }) =>
    [
      `server { listen 127.0.0.1:${port};`,
      withLines(own, { 'root /var/www/overfoot;': `root "${projectRoot}dist";` }),
      '}',
    ].join('\n'),
  );
  console.log(version);
  const report = (faults: readonly string[], file: string) => {
    faults.forEach((fault) => console.log(`FAILED  ${fault}`));
    console.log(faults.length === 0 ? `${file} holds.` : `${faults.length} faults.`);
    if (faults.length > 0) process.exitCode = 1;
  };
  try {
    report(
      [...(await headerFaults(url)), ...(await refusalFaults(url)), ...(await browserFaults(url))],
      'docs/nginx.conf',
    );
  } finally {
    await close();
  }
  report(await practiceFaults(), 'docs/practice-server/nginx.conf');
});

async function headerFaults(url: string): Promise<string[]> {
  const faults: string[] = [];
  for (const [path, type, keeping] of expectedFiles()) {
    const { status, headers } = await fetch(url + path);
    const wrong = (name: string) => `/${path}: ${name} is "${headers.get(name)}"`;
    if (status !== 200) faults.push(`/${path}: answered with ${status}`);
    if (!new RegExp(type).test(headers.get('content-type') ?? '')) faults.push(wrong('content-type'));
    if (headers.get('cache-control') !== keeping) faults.push(wrong('cache-control'));
    for (const [name, value] of Object.entries(securityHeaders))
      if (headers.get(name) !== value) faults.push(wrong(name));
  }
  return faults;
}

async function refusalFaults(url: string): Promise<string[]> {
  const missing = await fetch(`${url}there-is-no-such-file`);
  const posted = await fetch(url, { method: 'POST', body: 'x' });
  const etag = (await fetch(`${url}models/blazepose-lite.bin`)).headers.get('etag') ?? '';
  const again = await fetch(`${url}models/blazepose-lite.bin`, { headers: { 'If-None-Match': etag } });
  const part = await fetch(`${url}example/example.mp4`, { headers: { Range: 'bytes=0-9' } });
  const policy = missing.headers.get('content-security-policy');
  return [
    missing.status === 404 ? '' : `a missing file is answered with ${missing.status} instead of 404`,
    policy === securityHeaders['Content-Security-Policy'] ? '' : 'the page for a missing file has no policy',
    posted.status === 403 || posted.status === 405 ? '' : `an upload is answered with ${posted.status}`,
    again.status === 304 ? '' : `an unchanged file is answered with ${again.status} instead of 304`,
    part.status === 206 ? '' : `a part of a video is answered with ${part.status} instead of 206`,
  ].filter((fault) => fault !== '');
}

async function browserFaults(url: string): Promise<string[]> {
  const browser = await chromium.launch({ executablePath: findBrowser(), args: browserSwitches });
  try {
    const page = await browser.newPage();
    const faults: string[] = [];
    page.on('console', (message) => {
      if (/Content Security Policy|Refused to/i.test(message.text())) faults.push(message.text());
    });
    await page.goto(url);
    if (!(await page.evaluate(() => crossOriginIsolated))) faults.push('threads may not be used');
    await page.getByRole('button', { name: 'I treat people' }).click();
    const started = page.getByText(/the body finder (runs on|could not start)/);
    await started.waitFor({ timeout: 80_000 });
    console.log(await started.innerText());
    if (/could not/.test(await started.innerText())) faults.push('the body finder does not start');
    await page.getByRole('button', { name: 'Open the example' }).click();
    await page.getByRole('grid', { name: 'Repetitions' }).waitFor({ timeout: 20_000 });
    return faults;
  } finally {
    await browser.close();
  }
}
