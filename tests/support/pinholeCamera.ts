import { dot, minus, plus, times, toRad, vector, type Vector } from './space';

export interface CameraSettings {
  widthPx: number;
  heightPx: number;
  /** Focal length, px; the principal point is the middle of the picture. */
  focalPx: number;
  /** Orbit round the person: positive = the camera is on the person's left. */
  yawDeg: number;
  /** Positive = the camera looks up. */
  pitchDeg: number;
  /** Positive = what is upright leans to the right in the picture. */
  rollDeg: number;
  heightM: number;
  /** From the lens to the upright line through the person's place, along the floor. */
  distanceM: number;
  /** How far the person stands to the right of what the camera is aimed at. */
  offCentreM: number;
}

/** About what a phone held upright sees: 55 degrees from top to bottom. */
export const upright: CameraSettings = {
  widthPx: 720,
  heightPx: 1280,
  focalPx: 1229,
  yawDeg: 0,
  pitchDeg: 2,
  rollDeg: 0,
  heightM: 0.8,
  distanceM: 2.7,
  offCentreM: 0,
};

export interface PicturePoint {
  xPx: number;
  yPx: number;
}

/**
 * A camera without a lens error that looks at the person's place, (0, 0, 0) on the floor.
 *
 * @returns  where a place in the room is in the picture: px, x right, y down
 */
export function pinholeCamera(settings: CameraSettings): (place: Vector) => PicturePoint {
  const { focalPx, widthPx, heightPx, heightM, distanceM, offCentreM } = settings;
  const [yaw, pitch, roll] = [settings.yawDeg, settings.pitchDeg, settings.rollDeg].map(toRad) as [
    number,
    number,
    number,
  ];
  const level = vector(-Math.sin(yaw), 0, -Math.cos(yaw)); // straight ahead, along the floor
  const beside = vector(Math.cos(yaw), 0, -Math.sin(yaw)); // to the right in the picture
  const vertical = vector(0, 1, 0);
  const ahead = plus(times(level, Math.cos(pitch)), times(vertical, Math.sin(pitch)));
  const above = plus(times(vertical, Math.cos(pitch)), times(level, -Math.sin(pitch)));
  const right = plus(times(beside, Math.cos(roll)), times(above, Math.sin(roll)));
  const up = plus(times(above, Math.cos(roll)), times(beside, -Math.sin(roll)));
  const lens = plus(plus(times(level, -distanceM), times(beside, -offCentreM)), times(vertical, heightM));
  return (place) => {
    const ray = minus(place, lens);
    const depthM = dot(ray, ahead);
    return {
      xPx: widthPx / 2 + (focalPx * dot(ray, right)) / depthM,
      yPx: heightPx / 2 - (focalPx * dot(ray, up)) / depthM,
    };
  };
}
