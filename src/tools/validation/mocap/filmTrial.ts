import { toRadians } from '#core/geometry/degrees';
import { keypointCount, keypointNames } from '#core/keypoints/keypointNames';
import { buildKeypointTrack, type KeypointTrack } from '#core/keypoints/keypointTrack';
import { mocapRateHz, type MocapFrame, type Position } from './jointCentres';

/** Every third frame: about what a phone films. */
const everyFrame = 3;

export interface FilmingCamera {
  /** Orbit round the person: positive = the camera is towards the person's left, degrees. */
  yawDeg: number;
  heightM: number;
  distanceM: number;
  focalPx: number;
  widthPx: number;
  heightPx: number;
}

/** What an unerring pose network would see of a trial through a pinhole camera. */
export function filmTrial(frames: readonly MocapFrame[], camera: FilmingCamera): KeypointTrack {
  const middle = frames[0]!;
  const place: Position = [
    (middle.left_ankle[0] + middle.right_ankle[0]) / 2,
    0,
    (middle.left_ankle[2] + middle.right_ankle[2]) / 2,
  ];
  const filmed = frames.filter((_, i) => i % everyFrame === 0);
  const track = buildKeypointTrack(
    camera.widthPx,
    camera.heightPx,
    filmed.map((frame, i) => ({
      timeMs: (i * everyFrame * 1000) / mocapRateHz,
      row: rowOf(frame, place, camera),
    })),
  );
  return { ...track, isExact: true };
}

function rowOf(frame: MocapFrame, place: Position, camera: FilmingCamera): Float32Array {
  const row = new Float32Array(keypointCount * 3);
  keypointNames.forEach((name, point) => {
    // Points without a marker are placed at the shoulders; nothing is measured from them.
    const joint = name in frame ? frame[name as keyof MocapFrame] : frame.left_shoulder;
    const [x, y] = project(joint, place, camera);
    row.set([x, y, 1], point * 3);
  });
  return row;
}

function project([x, y, z]: Position, place: Position, camera: FilmingCamera): [number, number] {
  const rad = toRadians(camera.yawDeg);
  const [dx, dz] = [x - place[0], z - place[2]];
  // Turning the person away from the camera is the same as walking the camera round the person.
  const right = dx * Math.cos(rad) - dz * Math.sin(rad);
  const depth = camera.distanceM - (dx * Math.sin(rad) + dz * Math.cos(rad));
  return [
    camera.widthPx / 2 + (camera.focalPx * right) / depth,
    camera.heightPx / 2 - (camera.focalPx * (y - camera.heightM)) / depth,
  ];
}
