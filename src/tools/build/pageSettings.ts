import { fileURLToPath } from 'node:url';
import optimizeLocales from '@react-aria/optimize-locales-plugin';
import type { Plugin, UserConfig } from 'vite';
import { inferenceOnly } from './inferenceOnly.ts';
import { pagePolicy } from './securityHeaders.ts';
import { notePackages } from './thirdPartyNotices.ts';
import { wasmThreadSource } from './wasmThreadSource.ts';

/** Puts the policy first in every built page, so that it also applies on a server that sends no headers. */
const policyInPages: Plugin = {
  name: 'policy-in-pages',
  apply: 'build',
  transformIndexHtml: () => [
    {
      tag: 'meta',
      attrs: { 'http-equiv': 'Content-Security-Policy', content: pagePolicy },
      injectTo: 'head-prepend',
    },
  ],
};

const fromSource = (path: string) => fileURLToPath(new URL(`../../${path}`, import.meta.url));

/** Settings shared by the served pages and the headless ones. */
export const pageSettings: UserConfig = {
  root: fromSource(''),
  base: './',
  appType: 'mpa', // A missing file is told as missing, and not answered with the start page.
  plugins: [policyInPages, notePackages, optimizeLocales.vite({ locales: ['en-US', 'es-ES'] })],
  resolve: {
    alias: [
      // The same as `paths` in tsconfig.json.
      {
        find: /^#(?=(core|words|documents|device|ui|shell|features|app|tools)\/)/,
        replacement: fromSource(''),
      },
      { find: '@mediapipe/pose', replacement: fromSource('device/pose/worker/mediapipeStub.ts') },
    ],
  },
  worker: { format: 'es', plugins: () => [wasmThreadSource, inferenceOnly, notePackages] },
};
