import { CameraProblem } from './cameraProblem';

/** The part of the browser's media devices that cameras need; tests pass plain objects. */
export type CameraDevices = Pick<
  MediaDevices,
  'getUserMedia' | 'enumerateDevices' | 'addEventListener' | 'removeEventListener'
>;

/** @throws CameraProblem  'insecure-page' where the browser blocks cameras on this page */
export function cameraDevices(): CameraDevices {
  const { mediaDevices } = navigator as Partial<Pick<Navigator, 'mediaDevices'>>;
  if (mediaDevices === undefined) throw new CameraProblem(isSecureContext ? 'none' : 'insecure-page');
  return mediaDevices;
}
