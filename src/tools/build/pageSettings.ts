import { fileURLToPath } from 'node:url';
import type { Plugin, UserConfig } from 'vite';
import { pagePolicy } from '../../hosting/securityHeaders.ts';
import { inferenceOnly } from './inferenceOnly.ts';
import { notePackages } from './thirdPartyNotices.ts';
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

/** What the pages that are served and the headless ones have in common. */
export const pageSettings: UserConfig = {
  root: fileURLToPath(new URL('../..', import.meta.url)),
  base: './',
  plugins: [policyInPages, notePackages],
  resolve: {
    alias: {
      '@mediapipe/pose': fileURLToPath(new URL('../../pose/worker/mediapipeStub.ts', import.meta.url)),
    },
  },
  worker: { format: 'es', plugins: () => [wasmThreadSource, inferenceOnly, notePackages] },
};
