import { createRequire } from 'node:module';
import type { Plugin } from 'vite';

const factory = '@tensorflow/tfjs-backend-wasm/wasm-out/tfjs-backend-wasm-threaded-simd.js';
const asksForText = 'wasmFactoryThreadedSimd.toString()';

/**
 * Lets the pose worker be minified. Threaded wasm starts its threads from the text of one of its own functions,
 * which shortened names would break; with this, it uses the text that the function had before minifying.
 */
export const wasmThreadSource: Plugin = {
  name: 'wasm-thread-source',
  apply: 'build',
  transform: {
    filter: { id: /tfjs-backend-wasm\/dist\/backend_wasm\.js/ },
    handler(code) {
      if (!code.includes(asksForText)) this.error('The wasm backend no longer starts its threads this way.');
      const text = String(createRequire(import.meta.url)(factory));
      return { code: code.replace(asksForText, () => JSON.stringify(text)), map: null };
    },
  },
};
