import { CameraProblem } from './cameraProblem';

/** The part of the browser's media devices that cameras need; tests hand in plain objects. */
export type CameraDevices = Pick<
  MediaDevices,
  'getUserMedia' | 'enumerateDevices' | 'addEventListener' | 'removeEventListener'
>;

/** @throws CameraProblem  'insecure-page' where the browser keeps cameras from this page */
export function cameraDevices(): CameraDevices {
  const { mediaDevices } = navigator as Partial<Pick<Navigator, 'mediaDevices'>>;
  if (mediaDevices === undefined) throw new CameraProblem(isSecureContext ? 'none' : 'insecure-page');
  return mediaDevices;
}
