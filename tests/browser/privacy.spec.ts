import { readFileSync } from 'node:fs';
import { expect, test, type BrowserContext, type Page } from '@playwright/test';
import { firstHalf } from '../support/browser/firstHalf';
import { fixture } from '../support/browser/headlessPage';
import { tellCores } from '../support/browser/tellCores';

/** The network is slow on a machine that does other things as well. */
const trackingTimeoutMs = 80_000;

interface Watch {
  /** Every address that page and worker asked for, or opened a connection to. */
  requests: string[];
  /** What the page's policy refused, as reported to the page. */
  violations: string[];
  /** Everything that was written to the console, by page or worker. */
  console: string[];
}

/** Watches all that leaves a page, from before its first script runs. */
async function watch(context: BrowserContext): Promise<Watch> {
  const seen: Watch = { requests: [], violations: [], console: [] };
  context.on('request', (request) => seen.requests.push(request.url()));
  context.on('page', (page) => page.on('websocket', (socket) => seen.requests.push(socket.url())));
  context.on('console', (message) => seen.console.push(message.text()));
  context.on('weberror', (error) => seen.console.push(error.error().message));
  await context.exposeFunction('tellViolation', (text: string) => seen.violations.push(text));
  await context.addInitScript(() => {
    addEventListener('securitypolicyviolation', ({ effectiveDirective, blockedURI, sourceFile, sample }) => {
      const { tellViolation } = window as unknown as { tellViolation(text: string): void };
      tellViolation(`${effectiveDirective} refused ${blockedURI} (${sourceFile}) ${sample}`);
    });
  });
  return seen;
}

const rows = (page: Page) => page.getByRole('grid', { name: 'Repetitions' }).getByRole('rowheader');

const outside = (seen: Watch, origin: string) =>
  seen.requests.filter((url) => !url.startsWith(`${origin}/`) && !url.startsWith(`blob:${origin}/`));

/** Chromium tells of a worker's refusals in the console only. */
const refusals = (seen: Watch) => [
  ...seen.violations,
  ...seen.console.filter((text) => /Content Security Policy|Refused to/i.test(text)),
];

async function download(page: Page, press: () => Promise<void>) {
  const coming = page.waitForEvent('download');
  await press();
  const file = await coming;
  return { name: file.suggestedFilename(), text: readFileSync(await file.path(), 'utf8') };
}

test.use({ bypassCSP: false });

test(
  'nothing leaves the device while the example is viewed, a clip tracked and a recording saved',
  { tag: '@network' },
  async ({ page, context, baseURL }) => {
    test.setTimeout(2 * trackingTimeoutMs);
    const origin = new URL(baseURL!).origin;
    const seen = await watch(context);
    await page.goto('./');
    await page.getByRole('button', { name: 'Open the example' }).click();
    await expect(rows(page)).toHaveCount(6);
    await page.getByRole('button', { name: 'Go to this moment' }).click();
    await page.getByRole('button', { name: 'New video' }).click();

    await page.locator('input[type=file]').setInputFiles({
      name: 'Erika-Mustermann-knee.mp4',
      mimeType: 'video/mp4',
      buffer: firstHalf(),
    });
    await page.getByRole('radio', { name: 'Right leg' }).check({ force: true });
    await page.getByRole('button', { name: /How closely to look/ }).click();
    await page.getByRole('option', { name: /lite/ }).click();
    await page.getByRole('button', { name: 'Measure this video' }).click();
    await expect(rows(page)).toHaveCount(1, { timeout: trackingTimeoutMs });

    const files = [
      await download(page, () => page.getByRole('button', { name: 'Save recording' }).click()),
      await download(page, () => saveTable(page, 'One row per repetition')),
      await download(page, () => saveTable(page, 'One row per frame')),
    ];
    expect(files.map(({ name }) => name.replace(/\d{4}-\d\d-\d\d/, 'DATE'))).toEqual([
      'overfoot-session-DATE.json',
      'overfoot-repetitions-DATE.csv',
      'overfoot-frames-DATE.csv',
    ]);
    for (const { name, text } of files) expect(text, name).not.toContain('Mustermann');
    expect(files[1]!.text.split('\r\n')).toHaveLength(1 + 1 + 1);

    // The worker's own requests were heard too, so that silence means something.
    expect(seen.requests.some((url) => url.endsWith('models/blazepose-lite.bin'))).toBe(true);
    expect(outside(seen, origin)).toEqual([]);
    expect(refusals(seen)).toEqual([]);
    for (const url of seen.requests) expect(url).not.toMatch(/mustermann|[?#]/i);
    const spoken = seen.console.join('\n');
    expect(spoken).not.toMatch(
      /mustermann|\.mp4|\.json|\.csv|repetition|verdict|\d\s*(°|degrees)|inward|outward|knee/i,
    );
  },
);

test('WebAssembly may run threads', { tag: '@network' }, async ({ page, context }) => {
  const seen = await watch(context);
  await tellCores(page, 4);
  await page.goto('./');
  expect(await page.evaluate(() => crossOriginIsolated)).toBe(true);
  const running = /the body finder runs on .*(2 threads|graphics)/;
  await expect(page.getByText(running)).toBeVisible({ timeout: trackingTimeoutMs });
  expect(refusals(seen)).toEqual([]);
});

test('an injected script can’t fetch from elsewhere, start another script, or turn text into markup', async ({
  page,
  context,
}) => {
  const seen = await watch(context);
  await page.goto('./');
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  const outcome = await page.evaluate(async () => {
    const tries: Record<string, string> = {};
    const elsewhere = 'https://elsewhere.invalid/';
    const attempt = async (name: string, act: () => string | Promise<string>) => {
      try {
        tries[name] = await act();
      } catch {
        tries[name] = 'refused';
      }
    };
    const loads = (element: HTMLElement) =>
      new Promise<string>((resolve) => {
        element.onload = () => resolve('loaded');
        element.onerror = () => resolve('refused');
        document.body.append(element);
      });
    const script = (change: (element: HTMLScriptElement) => void) => {
      const element = document.createElement('script');
      change(element);
      return element;
    };
    const fromMemory = URL.createObjectURL(new Blob(['window.ran = true'], { type: 'text/javascript' }));
    await attempt('fetch', () => fetch(elsewhere, { mode: 'no-cors' }).then(() => 'sent'));
    // Counts as sent where the browser takes it before it asks the policy, which then drops it: see below.
    navigator.sendBeacon('https://beacon.invalid/', 'x');
    await attempt('picture', () => loads(Object.assign(new Image(), { src: elsewhere })));
    await attempt('script', () => loads(script((element) => (element.src = `${elsewhere}x.js`))));
    await attempt('script from memory', () => loads(script((element) => (element.src = fromMemory))));
    await attempt('inline script', () => {
      document.body.append(script((element) => (element.textContent = 'window.ran = true')));
      return (window as unknown as { ran?: boolean }).ran ? 'ran' : 'refused';
    });
    await attempt('markup', () => {
      document.createElement('div').innerHTML = '<img src=x onerror="window.ran = true">';
      return 'parsed';
    });
    await attempt('worker from elsewhere', () => {
      new Worker(`${elsewhere}x.js`);
      return 'started';
    });
    await attempt('another rule', () => {
      const { trustedTypes } = window as unknown as {
        trustedTypes: { createPolicy(name: string, rules: object): unknown };
      };
      trustedTypes.createPolicy('mine', { createHTML: (text: string) => text });
      return 'made';
    });
    await attempt('eval', () => String(new Function('return "ran"')()));
    return tries;
  });
  for (const [name, result] of Object.entries(outcome)) expect(result, name).toBe('refused');
  expect(Object.keys(outcome)).toHaveLength(9);
  await expect
    .poll(() => new Set(seen.violations.map((text) => text.split(' ')[0])))
    .toEqual(
      new Set(['connect-src', 'img-src', 'script-src-elem', 'require-trusted-types-for', 'trusted-types']),
    );
  expect(seen.violations.join('\n')).toContain('connect-src refused https://beacon.invalid/');
});

test('a network whose weights were changed measures nothing, and says so', async ({ page }) => {
  await page.route('**/models/blazepose-lite.bin', async (route) => {
    const answer = await route.fetch();
    const body = await answer.body();
    body[100_000]! ^= 1;
    await route.fulfill({ response: answer, body });
  });
  await page.goto('./');
  await page.locator('input[type=file]').setInputFiles(fixture('short.mp4'));
  await page.getByRole('radio', { name: 'Right leg' }).check({ force: true });
  await page.getByRole('button', { name: /How closely to look/ }).click();
  await page.getByRole('option', { name: /lite/ }).click();
  await page.getByRole('button', { name: 'Measure this video' }).click();
  await expect(
    page.getByText(/blazepose-lite\.bin is not the one that this version measures with/),
  ).toBeVisible({
    timeout: trackingTimeoutMs,
  });
});

async function saveTable(page: Page, name: string) {
  await page.getByRole('button', { name: 'Save as CSV' }).click();
  await page.getByRole('menuitem', { name }).click();
}
