import type { Camera, CameraFacts, CameraWish } from './camera';
import { cameraDevices, type CameraDevices } from './cameraDevices';
import { CameraProblem } from './cameraProblem';
import { explainCameraError } from './explainCameraError';
import { facingOf } from './facingOf';

/** Twice what the pose network sees of a person who fills the height, and smooth enough for the fastest repetition. */
const wishedSize = { width: { ideal: 1280 }, height: { ideal: 720 }, frameRate: { ideal: 30 } };

/**
 * Requests a camera, without sound. The browser may ask the person first.
 *
 * The size is requested with the long side across, as sensors have it; a phone held upright rotates the
 * picture itself.
 *
 * @throws CameraProblem  with a sentence that says what to do
 */
export async function openCamera(wish: CameraWish, devices?: CameraDevices): Promise<Camera> {
  let stream: MediaStream;
  try {
    stream = await (devices ?? cameraDevices()).getUserMedia({ audio: false, video: constraintsOf(wish) });
  } catch (error) {
    throw explainCameraError(error);
  }
  const [track] = stream.getVideoTracks();
  if (track === undefined) throw new CameraProblem('none');
  let closed = false;
  const listen = (type: 'ended' | 'mute' | 'unmute', listener: () => void) => {
    track.addEventListener(type, listener);
    return () => track.removeEventListener(type, listener);
  };
  return {
    stream,
    facts: readFacts(track),
    onEnded(listener) {
      const tell = () => listener(new CameraProblem('unplugged'));
      // It may have ended between opening it and listening for its end.
      if (track.readyState === 'ended' && !closed) queueMicrotask(tell);
      return listen('ended', tell);
    },
    onMuted(listener) {
      const stops = [listen('mute', () => listener(true)), listen('unmute', () => listener(false))];
      return () => stops.forEach((stop) => stop());
    },
    close() {
      closed = true;
      track.stop();
    },
  };
}

function constraintsOf(wish: CameraWish): MediaTrackConstraints {
  const which =
    'deviceId' in wish
      ? { deviceId: { exact: wish.deviceId } }
      : { facingMode: { ideal: wish.facing === 'front' ? 'user' : 'environment' } };
  // Cropping a picture to size would cut off feet; a browser that does not know the option ignores it.
  const uncut: object = { resizeMode: { ideal: 'none' } };
  return { ...wishedSize, ...which, ...uncut };
}

function readFacts(track: MediaStreamTrack): CameraFacts {
  const { deviceId = '', width = 0, height = 0, frameRate = 0, facingMode } = track.getSettings();
  const facing = facingOf(track.label, facingMode);
  return { deviceId, label: track.label, facing, widthPx: width, heightPx: height, frameRateHz: frameRate };
}
