/** A place in body heights: x to the person's left, y up from the floor, z ahead of them. */
export interface Place {
  x: number;
  y: number;
  z: number;
}

/** Something that the person sits on, stands on or presses into. */
export interface Prop {
  kind: 'chair' | 'step' | 'ball' | 'wall';
  /** Middle of its top; a ball's centre; where a wall stands on the floor. */
  at: Place;
}

export type FigureMoment = 'start' | 'end';

/** Where pelvis and feet are, with the right leg working; the rest follows from the lengths. */
export interface Stance {
  pelvis: Place;
  /** The trunk's lean forward, degrees. */
  leanDeg: number;
  /** The whole body's lean towards the working side, hips and arms included, degrees; 0 where nothing is said. */
  sideLeanDeg?: number;
  /** Whether the forearm of the working side stands on the floor below its shoulder. */
  isOnForearm?: boolean;
  /** How far the arms are raised forward from hanging, degrees; 0 where nothing is said. */
  armDeg?: number;
  own: Place;
  free: Place;
  prop?: Prop;
  /** Whether the working thigh presses down, which an arrow shows. */
  presses?: boolean;
}

/** An exercise at its start and at its far end. Postures: common practice, no source. */
export interface Figure extends Record<FigureMoment, Stance> {
  /** Whether the legs lie on the floor, where they would be hidden by their feet from the front. */
  isLying?: boolean;
  /** Whether the person lies on the working side, across what a camera in front sees. */
  isOnSide?: boolean;
}

/**
 * Lengths in body heights: Drillis & Contini 1966, as in Winter, table 4.1; half-breadths of hips and shoulders too.
 */
export const segmentLengths = {
  shank: 0.246,
  thigh: 0.245,
  trunk: 0.288,
  neck: 0.1,
  upperArm: 0.186,
  forearm: 0.146,
  foot: 0.152,
  ankleHeight: 0.039,
  halfHips: 0.0955,
  halfShoulders: 0.1295,
} as const;

const { shank, thigh, ankleHeight, halfHips } = segmentLengths;

export const at = (x: number, y: number, z: number): Place => ({ x, y, z });
/** An ankle over a foot that is flat on the floor. */
export const onFloor = (x: number, z = 0): Place => at(x, ankleHeight, z);
/** Where the ankles are sideways when the feet are below the hips. */
export const workingX = -halfHips;
export const freeX = halfHips;
/** Pelvis height on nearly straight legs, and on a seat on which the thigh lies level. */
export const uprightY = ankleHeight + 0.995 * (shank + thigh);
export const seatedY = ankleHeight + shank;
/** How far the pelvis of a seated person is behind the ankles. */
export const seatZ = -0.96 * thigh;
export const chair: Prop = { kind: 'chair', at: at(0, seatedY - 0.04, seatZ) };
