import * as tf from '@tensorflow/tfjs';
import { getThreadsCount, setThreadsCount, setWasmPaths } from '@tensorflow/tfjs-backend-wasm';
import '@tensorflow/tfjs-backend-webgpu';
import type { PoseDevice } from '#core/keypoints/poseModel';

/** Renderer names of software graphics: slower there than the wasm backend. */
const softwareRenderer = /swiftshader|llvmpipe|software|basic render/i;

/**
 * Starts the fastest backend that this device has: WebGPU or WebGL on a real graphics processor, otherwise
 * wasm with as many threads as the page may use, otherwise wasm with one.
 *
 * @param assetsUrl  folder URL that holds `wasm/`, with a slash at its end
 * @throws Error when no backend starts
 */
export async function pickBackend(assetsUrl: string): Promise<PoseDevice> {
  if ((await hasHardwareWebGpu()) && (await tf.setBackend('webgpu')))
    return { backend: 'webgpu', threads: 1 };
  if (hasHardwareWebGl() && (await tf.setBackend('webgl'))) {
    failWhenContextIsLost();
    return { backend: 'webgl', threads: 1 };
  }

  setWasmPaths(`${assetsUrl}wasm/`);
  setThreadsCount(self.crossOriginIsolated ? Math.min(8, navigator.hardwareConcurrency) : 1);
  if (await tf.setBackend('wasm')) return { backend: 'wasm', threads: getThreadsCount() };
  throw new Error(
    'The device has too little memory left, or its browser is too old. Close other pages and programs, then reload the page; or use another browser.',
  );
}

async function hasHardwareWebGpu(): Promise<boolean> {
  if (!('gpu' in navigator)) return false;
  const adapter = await navigator.gpu.requestAdapter().catch(() => null);
  if (adapter === null) return false;
  const { description, device, vendor } = adapter.info;
  return !adapter.info.isFallbackAdapter && !softwareRenderer.test(`${vendor} ${device} ${description}`);
}

/** What runs on a lost graphics context never answers: an error ends the worker's work at once instead. */
function failWhenContextIsLost(): void {
  const { gpgpu } = tf.backend() as unknown as { gpgpu: { gl: { canvas: OffscreenCanvas } } };
  gpgpu.gl.canvas.addEventListener('webglcontextlost', () => {
    throw new Error('the graphics processor was taken away');
  });
}

function hasHardwareWebGl(): boolean {
  const gl = new OffscreenCanvas(1, 1).getContext('webgl2');
  if (gl === null) return false;
  const info = gl.getExtension('WEBGL_debug_renderer_info');
  const renderer: unknown = gl.getParameter(info === null ? gl.RENDERER : info.UNMASKED_RENDERER_WEBGL);
  gl.getExtension('WEBGL_lose_context')?.loseContext();
  return typeof renderer === 'string' && !softwareRenderer.test(renderer);
}
