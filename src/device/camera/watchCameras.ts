import { cameraDevices, type CameraDevices } from './cameraDevices';

/**
 * Calls back when a camera is plugged in or unplugged; listCameras then gives the current ones.
 *
 * @returns a function that stops listening
 * @throws CameraProblem  'insecure-page' where the browser blocks cameras on this page
 */
export function watchCameras(listener: () => void, devices?: CameraDevices): () => void {
  const watched = devices ?? cameraDevices();
  watched.addEventListener('devicechange', listener);
  return () => watched.removeEventListener('devicechange', listener);
}
