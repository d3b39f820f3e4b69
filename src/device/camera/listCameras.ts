import { message } from '#words/messages/message';
import type { CameraChoice } from './camera';
import { cameraDevices, type CameraDevices } from './cameraDevices';
import { explainCameraError } from './explainCameraError';
import { facingOf } from './facingOf';

/**
 * The cameras of this device; names, and more than one, are available only once a camera has been allowed.
 *
 * @throws CameraProblem  with a sentence that says what to do
 */
export async function listCameras(devices?: CameraDevices): Promise<CameraChoice[]> {
  try {
    const all = await (devices ?? cameraDevices()).enumerateDevices();
    return all
      .filter(({ kind }) => kind === 'videoinput')
      .map(({ deviceId, label }, index) => ({
        deviceId,
        label: label === '' ? message('camera.number', { number: index + 1 }) : label,
        facing: facingOf(label),
      }));
  } catch (error) {
    throw explainCameraError(error);
  }
}
