import { fileURLToPath } from 'node:url';
import { defineConfig, mergeConfig } from 'vite';
import { pageSettings } from './src/tools/build/pageSettings.ts';

const fromHere = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/** The headless pages, which commands and tests drive, next to a copy of the built pages that are served. */
export default defineConfig(
  mergeConfig(pageSettings, {
    publicDir: fromHere('dist'),
    build: {
      outDir: fromHere('dist-tools'),
      emptyOutDir: true,
      assetsDir: 'tools/headless/assets',
      chunkSizeWarningLimit: 4000,
      rolldownOptions: {
        input: ['headless', 'storage'].map((page) => fromHere(`src/tools/headless/${page}.html`)),
      },
    },
  }),
);
