import { defineConfig } from '@playwright/test';
import { deviceOf } from '#tools/commands/tools/deviceOf';
import { browserSwitches, findBrowser } from '#tools/commands/tools/findBrowser';
import { projectRoot } from '#tools/commands/tools/projectRoot';

const port = Number(process.env['OVERFOOT_TEST_PORT'] ?? 4273);
/** Where the tests' runner wants a report for. */
const report = process.env['OVERFOOT_TEST_REPORT'];

/** Tests in a browser, against the built pages: `npm run build && npm run build:tools` comes first. */
export default defineConfig({
  testDir: '.',
  // Several of these may run at once.
  outputDir: report?.replace(/\.json$/, '') ?? `${projectRoot}test-results/browser`,
  workers: 3,
  fullyParallel: false, // Each file is loaded by one worker only.
  expect: { timeout: 15_000 }, // Other programs may take the processor meanwhile.
  projects: [
    { name: 'screens', grepInvert: /@network|@alone/, testIgnore: 'camera/**' },
    // With more than two on two cores, sets in real time lose pictures.
    { name: 'camera', grepInvert: /@network|@alone/, testMatch: 'camera/**/*.spec.ts', workers: 2 },
    { name: 'network', grep: /@network/, workers: 2 },
    { name: 'alone', grep: /@alone/, workers: 1 },
  ],
  timeout: 90_000,
  forbidOnly: process.env['CI'] !== undefined,
  reporter: [['list'], ...(report === undefined ? [] : [['json', { outputFile: report }] as const])],
  use: {
    baseURL: `http://127.0.0.1:${port}/`,
    launchOptions: { executablePath: findBrowser(), args: browserSwitches },
    screenshot: 'only-on-failure',
    storageState: deviceOf('treats', `http://127.0.0.1:${port}`),
    serviceWorkers: 'block', // Else every test would keep 20 MB; offline.spec.ts allows them.
    bypassCSP: true, // Tests put scripts of their own into the page; privacy.spec.ts keeps the policy.
  },
  webServer: {
    command: `npx vite preview --outDir ../dist-tools --host 127.0.0.1 --port ${port} --strictPort`,
    cwd: projectRoot,
    url: `http://127.0.0.1:${port}/`,
  },
});
