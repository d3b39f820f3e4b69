/**
 * A point's path through space, one position a sample.
 *
 * Frame: camera; x right in the picture, y down, z away from the camera; in units of the leg's shank length
 */
export interface Path {
  x: Float64Array;
  y: Float64Array;
  z: Float64Array;
}

export function emptyPath(samples: number): Path {
  return { x: new Float64Array(samples), y: new Float64Array(samples), z: new Float64Array(samples) };
}
