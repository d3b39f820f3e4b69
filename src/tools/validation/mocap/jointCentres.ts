import { mean, median } from 'd3-array';
import { csvParse } from 'd3-dsv';
import { toDegrees } from '#core/geometry/degrees';
import type { Side } from '#core/protocol/side';

/** x to the person's left, y up, z forward; m. */
export type Position = readonly [x: number, y: number, z: number];

export type MocapJoint = 'hip' | 'knee' | 'ankle' | 'heel' | 'foot_index' | 'shoulder';

/** Joint centres of one instant, square to the body as it faces on average over the trial. */
export type MocapFrame = Record<`${Side}_${MocapJoint}`, Position>;

/** Frames a second of the recordings. */
export const mocapRateHz = 100;

/** How far the marker on the outside of knee and ankle is from the joint's centre, mm; see the data's own notes. */
const kneeMm = 55;
const ankleMm = 38;
/**
 * Hip centre from the middle of the front pelvic spines, as shares of their distance: to the side, backwards, down.
 * Source: Bell, Brand & Pedersen 1989, from memory (14 % medial, 30 % distal, 19 % posterior of the spine itself).
 */
const hipShares = { aside: 0.36, back: 0.19, down: 0.3 };

/**
 * Joint centres from the marker positions of one trial.
 *
 * @param csv  one row a frame, columns MARKER_x, MARKER_y, MARKER_z in mm, z up; an empty cell = marker unseen
 * @returns  null where a marker that is needed is missing in any frame
 */
export function jointCentres(csv: string): MocapFrame[] | null {
  const rows = csvParse(csv).map((row) => (marker: string): Position | null => {
    const [x, y, z] = ['x', 'y', 'z'].map((axis) => row[`${marker}_${axis}`] ?? '');
    return x === '' || y === '' || z === '' ? null : [Number(x), Number(y), Number(z)];
  });
  const frames: Record<string, Position>[] = [];
  for (const marker of rows) {
    const needed: Record<string, Position> = {};
    for (const letter of ['L', 'R']) {
      for (const name of ['ASI', 'PSI', 'KNE', 'ANK', 'HEE', 'TOE', 'SHO']) {
        const place = marker(letter + name);
        if (place === null) return null;
        needed[letter + name] = place;
      }
    }
    frames.push(needed);
  }
  if (frames.length === 0) return null;
  const headingRad = median(frames, (frame) => pelvisHeadingRad(frame))!;
  return frames.map((frame) => toBody(frame, headingRad));
}

/** Direction that the pelvis faces on the floor, from the back spines to the front ones. */
function pelvisHeadingRad({ LASI, RASI, LPSI, RPSI }: Record<string, Position>): number {
  const [front, back] = [middle(LASI!, RASI!), middle(LPSI!, RPSI!)];
  return Math.atan2(front[1] - back[1], front[0] - back[0]);
}

function toBody(frame: Record<string, Position>, headingRad: number): MocapFrame {
  const [cos, sin] = [Math.cos(headingRad), Math.sin(headingRad)];
  // Forward is (cos, sin) on the floor, the person's left a quarter turn on from it.
  const turn = ([x, y, z]: Position): Position => [
    (y * cos - x * sin) / 1000,
    z / 1000,
    (x * cos + y * sin) / 1000,
  ];
  const at = (marker: string) => turn(frame[marker]!);
  const pelvis = pelvisAxes(at('LASI'), at('RASI'), middle(at('LPSI'), at('RPSI')));
  const side = (letter: 'L' | 'R') => {
    const outward = letter === 'L' ? 1 : -1;
    const inward = (place: Position, mm: number): Position => [
      place[0] - (outward * mm) / 1000,
      place[1],
      place[2],
    ];
    return {
      hip: hipCentre(pelvis, outward),
      knee: inward(at(`${letter}KNE`), kneeMm),
      ankle: inward(at(`${letter}ANK`), ankleMm),
      heel: at(`${letter}HEE`),
      foot_index: at(`${letter}TOE`),
      shoulder: at(`${letter}SHO`),
    };
  };
  const [l, r] = [side('L'), side('R')];
  return Object.fromEntries([
    ...Object.entries(l).map(([joint, place]) => [`left_${joint}`, place]),
    ...Object.entries(r).map(([joint, place]) => [`right_${joint}`, place]),
  ]) as MocapFrame;
}

interface PelvisAxes {
  /** Middle of the front spines, and their distance in m. */
  front: Position;
  spread: number;
  left: Position;
  up: Position;
  forward: Position;
}

/** The pelvis' own axes from its spines: they tilt with it. */
function pelvisAxes(leftSpine: Position, rightSpine: Position, back: Position): PelvisAxes {
  const front = middle(leftSpine, rightSpine);
  const across = minus(leftSpine, rightSpine);
  const spread = Math.hypot(...across);
  const left = unit(across);
  const up = unit(cross(minus(front, back), left));
  return { front, spread, left, up, forward: cross(left, up) };
}

function hipCentre({ front, spread, left, up, forward }: PelvisAxes, outward: 1 | -1): Position {
  const along = (axis: 0 | 1 | 2) =>
    front[axis] +
    spread *
      (outward * hipShares.aside * left[axis] - hipShares.down * up[axis] - hipShares.back * forward[axis]);
  return [along(0), along(1), along(2)];
}

function minus(a: Position, b: Position): Position {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

function cross(a: Position, b: Position): Position {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

function unit(a: Position): Position {
  const length = Math.hypot(...a);
  return [a[0] / length, a[1] / length, a[2] / length];
}

function middle(a: Position, b: Position): Position {
  return [mean([a[0], b[0]])!, mean([a[1], b[1]])!, mean([a[2], b[2]])!];
}

/**
 * Knee angle of a leg square to the body's front, degrees, inward positive, computed directly from the
 * positions.
 *
 * Independent of the measuring code, so that one can check the other.
 */
export function trueFrontalDeg(frame: MocapFrame, side: Side): number {
  const [hip, knee, ankle] = [frame[`${side}_hip`], frame[`${side}_knee`], frame[`${side}_ankle`]];
  const thigh = Math.atan2(knee[0] - hip[0], hip[1] - knee[1]);
  const shank = Math.atan2(ankle[0] - knee[0], knee[1] - ankle[1]);
  // The left leg's knee is inward when thigh runs to the right (x falls) and the shank back to the left.
  return toDegrees(side === 'left' ? shank - thigh : thigh - shank);
}
