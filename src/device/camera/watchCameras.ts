import { cameraDevices, type CameraDevices } from './cameraDevices';

/**
 * Hears when a camera is plugged in or out; listCameras then tells which there are.
 *
 * @returns the way to stop listening
 * @throws CameraProblem  'insecure-page' where the browser keeps cameras from this page
 */
export function watchCameras(listener: () => void, devices?: CameraDevices): () => void {
  const watched = devices ?? cameraDevices();
  watched.addEventListener('devicechange', listener);
  return () => watched.removeEventListener('devicechange', listener);
}
