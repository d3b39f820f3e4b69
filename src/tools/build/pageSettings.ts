import { fileURLToPath } from 'node:url';
import type { Plugin, UserConfig } from 'vite';
import { pagePolicy } from './securityHeaders.ts';
import { inferenceOnly } from './inferenceOnly.ts';
import { wasmThreadSource } from './wasmThreadSource.ts';

/** Puts the policy into every built page, first of all, so that it holds on a server that sends no headers. */
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

/** What the pages that are served and the headless ones have in common. */
export const pageSettings: UserConfig = {
  root: fromSource(''),
  base: './',
  plugins: [policyInPages],
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
  worker: { format: 'es', plugins: () => [wasmThreadSource, inferenceOnly] },
};
