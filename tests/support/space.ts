/** A place or direction: m, x to the left of a person who faces us along +z, y up. */
export interface Vector {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

export function vector(x: number, y: number, z: number): Vector {
  return { x, y, z };
}

export function plus(a: Vector, b: Vector): Vector {
  return vector(a.x + b.x, a.y + b.y, a.z + b.z);
}

export function minus(a: Vector, b: Vector): Vector {
  return vector(a.x - b.x, a.y - b.y, a.z - b.z);
}

export function times(a: Vector, factor: number): Vector {
  return vector(a.x * factor, a.y * factor, a.z * factor);
}

export function dot(a: Vector, b: Vector): number {
  return a.x * b.x + a.y * b.y + a.z * b.z;
}

export function cross(a: Vector, b: Vector): Vector {
  return vector(a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x);
}

export function distance(a: Vector, b: Vector): number {
  return Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z);
}

export function unit(a: Vector): Vector {
  return times(a, 1 / Math.hypot(a.x, a.y, a.z));
}

export function middle(a: Vector, b: Vector): Vector {
  return times(plus(a, b), 0.5);
}

/** Turns about the x axis: positive brings up (y) towards the front (z), as in bowing. */
export function bow(a: Vector, deg: number): Vector {
  const [cos, sin] = [Math.cos(toRad(deg)), Math.sin(toRad(deg))];
  return vector(a.x, a.y * cos - a.z * sin, a.y * sin + a.z * cos);
}

/** Turns about the y axis: positive brings the front (z) towards the person's left (x). */
export function turn(a: Vector, deg: number): Vector {
  const [cos, sin] = [Math.cos(toRad(deg)), Math.sin(toRad(deg))];
  return vector(a.x * cos + a.z * sin, a.y, a.z * cos - a.x * sin);
}

/** Turns about the z axis: positive brings up (y) towards the person's left (x), as in leaning to the left. */
export function lean(a: Vector, deg: number): Vector {
  const [cos, sin] = [Math.cos(toRad(deg)), Math.sin(toRad(deg))];
  return vector(a.x * cos + a.y * sin, a.y * cos - a.x * sin, a.z);
}

export function toRad(deg: number): number {
  return (deg * Math.PI) / 180;
}
