import { defineConfig } from '@playwright/test';
import { browserSwitches, findBrowser } from '#tools/commands/tools/findBrowser';
import { projectRoot } from '#tools/commands/tools/projectRoot';

const port = Number(process.env['OVERFOOT_TEST_PORT'] ?? 4273);
/** Where the tests' runner wants a report for. */
const report = process.env['OVERFOOT_TEST_REPORT'];

/** Specs that run the pose network, which takes all cores by itself, or film, which needs them in real time. */
const network = [
  'badVideos',
  'commands',
  'home',
  'live',
  'mirror',
  'oddVideos',
  'offline',
  'pipeline',
  'privacy',
  'sending',
  'storage',
].map((name) => `${name}.spec.ts`);

/** Tests in a browser, against the built pages: `npm run build && npm run build:tools` comes first. */
export default defineConfig({
  testDir: '.',
  outputDir: `${projectRoot}test-results/browser`,
  workers: 2,
  projects: [
    { name: 'screens', testIgnore: network },
    { name: 'network', testMatch: network, workers: 1 },
  ],
  timeout: 90_000,
  forbidOnly: process.env['CI'] !== undefined,
  reporter: [['list'], ...(report === undefined ? [] : [['json', { outputFile: report }] as const])],
  use: {
    baseURL: `http://127.0.0.1:${port}/`,
    launchOptions: { executablePath: findBrowser(), args: browserSwitches },
    screenshot: 'only-on-failure',
    serviceWorkers: 'block', // Else every test would keep 20 MB; offline.spec.ts allows them.
    bypassCSP: true, // Tests put scripts of their own into the page; privacy.spec.ts keeps the policy.
  },
  webServer: {
    command: `npx vite preview --outDir ../dist-tools --host 127.0.0.1 --port ${port} --strictPort`,
    cwd: projectRoot,
    url: `http://127.0.0.1:${port}/`,
  },
});
