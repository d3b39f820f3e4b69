import { defineConfig } from '@playwright/test';
import { browserSwitches, findBrowser } from '#tools/commands/tools/findBrowser';
import { projectRoot } from '#tools/commands/tools/projectRoot';

const port = Number(process.env['OVERFOOT_TEST_PORT'] ?? 4273);

/** Tests in a browser, against the built pages: `npm run build && npm run build:tools` comes first. */
export default defineConfig({
  testDir: '.',
  outputDir: `${projectRoot}test-results/browser`,
  workers: 1, // The pose network takes all cores by itself.
  timeout: 90_000,
  forbidOnly: process.env['CI'] !== undefined,
  reporter: [['list'], ['json', { outputFile: `${projectRoot}test-results/playwright.json` }]],
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
