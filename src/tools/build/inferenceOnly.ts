import type { Plugin } from 'vite';

/**
 * Parts of TensorFlow.js that register themselves on import and that running a finished network never calls: training
 * (layers, data, gradients), methods on tensors, and the slow backend in plain JavaScript.
 */
const unusedParts = /@tensorflow\/(tfjs-(layers|data)\/|tfjs-core\/.*\/register_all_|tfjs-backend-cpu\/)/;

/** Lets the bundler leave those parts out where nothing imports from them. */
export const inferenceOnly: Plugin = {
  name: 'inference-only',
  apply: 'build',
  transform: { filter: { id: unusedParts }, handler: () => ({ moduleSideEffects: false }) },
};
