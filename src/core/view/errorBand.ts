import { toDegrees } from '../geometry/degrees';
import type { Side } from '../protocol/side';
import { cosSin } from './bodyFrame';
import type { FrontalLeg } from './frontalKneeAngle';
import { placeOnRay, type LiftedLeg } from './liftLeg';
import { emptyPath, type Path } from './path';

/**
 * How far to either side the network puts a joint, beyond what quiet standing corrects, one standard
 * deviation in shank lengths: set with all the recordings and the motion capture in view (docs/view.md).
 */
export const placingSd = 0.014;
/**
 * Error of a segment's length, taken at its longest in the recording, as a share of it: a leg that never
 * quite straightens reads about 2 % short (synthetic recordings; docs/view.md).
 */
const segmentSd = 0.02;
/** Usual error of the assumed focal length, as a share: phone and laptop cameras differ by about this much. */
const focalSd = 0.2;
/** A camera placed on something looks up or down by about this, degrees: common practice, no source. */
const pitchSdDeg = 4;
const [pitchCos, pitchSin] = cosSin(pitchSdDeg);
/** From one standard deviation to the half-width that covers nine of ten normal errors. */
export const ninetyPercent = 1.645;

/** Half-widths of an error band, in the unit of the quantity, 0 or more. */
export interface Band {
  /** Made to hold the truth in nine of ten cases. */
  whole: number;
  /** The part that each repetition has by itself: whole² = shared² + own². What is shared is alike in a whole set. */
  own: number;
}

/** Of a quantity that has no error, or none that is known. */
export const noBand: Band = { whole: 0, own: 0 };

/** Of a quantity whose error each repetition has by itself. */
export function ownBand(halfWidth: number): Band {
  return { whole: halfWidth, own: halfWidth };
}

/** A band that is wider or narrower by a factor. */
export function scaleBand({ whole, own }: Band, by: number): Band {
  return { whole: by * whole, own: by * own };
}

export interface ErrorSources {
  yawDeg: number;
  yawSdDeg: number;
  /** Uncertainty of the camera's roll, one standard deviation, degrees. */
  rollSdDeg: number;
  /** Jitter of the joints after smoothing, one standard deviation, in shank lengths. */
  jitter: number;
}

/**
 * Half-width of the error band of a quantity of one leg. The sources are the yaw's uncertainty, the joints'
 * placing and jitter, the segments' lengths, the focal length, and the camera's roll and pitch. Each is moved
 * by one standard deviation on its own, and the squares of the effects are added.
 *
 * @param quantity  any number computed from a leg seen square to the body
 * Placing and jitter differ from one repetition to the next; all other sources are shared by a set.
 *
 * @returns  the half-widths at a sample of the leg, in the quantity's own unit
 * Source:   first-order propagation of uncertainty (JCGM 100:2008, 5.1.2)
 */
export function errorBand(
  leg: LiftedLeg,
  side: Side,
  sources: ErrorSources,
  quantity: (leg: FrontalLeg, side: Side, i: number) => number,
): (sample: number) => Band {
  const at = oneSample(leg.thigh);
  const moved = oneSample(leg.thigh);
  const square = oneSample(leg.thigh);
  const valueOf = (yawDeg: number) => {
    const [cos, sin] = cosSin(yawDeg);
    for (const joint of joints) turnSample(square[joint], moved[joint], cos, sin);
    square.thigh = moved.thigh;
    return quantity(square, side, 0);
  };
  const moves = movesOf(at, moved, sources);
  return (sample) => {
    for (const joint of joints) copySample(at[joint], leg[joint], sample);
    putBack(moved, at);
    const here = valueOf(sources.yawDeg);
    let [squares, ownSquares] = [0, 0];
    for (const { move, isOwn } of moves) {
      let larger = 0;
      for (const by of [1, -1] as const) {
        putBack(moved, at);
        const yawShiftDeg = move(by);
        larger = Math.max(larger, Math.abs(valueOf(sources.yawDeg + yawShiftDeg) - here));
      }
      squares += larger * larger;
      if (isOwn) ownSquares += larger * larger;
    }
    return scaleBand({ whole: Math.sqrt(squares), own: Math.sqrt(ownSquares) }, ninetyPercent);
  };
}

interface Move {
  /** Moves a leg by one standard deviation of one source, either way; returns how far the yaw moves with it, degrees. */
  move: (by: 1 | -1) => number;
  /** Whether each repetition has this error by itself. */
  isOwn: boolean;
}

/** The sources one by one, each as its effect on a leg that was `at` a place. */
function movesOf(at: LiftedLeg, moved: LiftedLeg, { yawSdDeg, rollSdDeg, jitter }: ErrorSources): Move[] {
  const jointSd = Math.hypot(placingSd, jitter);
  const [rollCos, rollSin] = cosSin(rollSdDeg);
  const shared = (move: Move['move']): Move => ({ move, isOwn: false });
  const still =
    (move: (by: 1 | -1) => void): Move['move'] =>
    (by) => (move(by), 0);
  return [
    shared((by) => by * yawSdDeg),
    ...joints.map((joint) => ({ move: still((by) => (moved[joint].x[0]! += by * jointSd)), isOwn: true })),
    shared(still((by) => liftAgain(moved, at, 1 + by * segmentSd, at.thigh, 1))),
    shared(still((by) => liftAgain(moved, at, 1, at.thigh * (1 + by * segmentSd), 1))),
    // The yaw is read through the same focal length, and follows the person's bearing under it.
    shared((by) => {
      liftAgain(moved, at, 1, at.thigh, 1 + by * focalSd);
      return toDegrees(Math.atan2(at.knee.x[0]!, at.knee.z[0]!)) * (1 - 1 / (1 + by * focalSd));
    }),
    shared(still((by) => roll(moved, rollCos, by * rollSin))),
    shared(still((by) => pitch(moved, pitchCos, by * pitchSin))),
  ];
}

const joints = ['hip', 'knee', 'ankle'] as const;

/** Buffer for one sample of a leg. */
function oneSample(thigh: number): LiftedLeg {
  return { hip: emptyPath(1), knee: emptyPath(1), ankle: emptyPath(1), thigh };
}

function putBack(moved: LiftedLeg, at: LiftedLeg): void {
  for (const joint of joints) copySample(moved[joint], at[joint], 0);
  moved.thigh = at.thigh;
}

function copySample(to: Path, from: Path, i: number): void {
  to.x[0] = from.x[i]!;
  to.y[0] = from.y[i]!;
  to.z[0] = from.z[i]!;
}

/** toBodyFrame for one sample, into an existing buffer. */
function turnSample(to: Path, { x, y, z }: Path, cos: number, sin: number): void {
  to.x[0] = x[0]! * cos + z[0]! * sin;
  to.y[0] = y[0]!;
  to.z[0] = z[0]! * cos - x[0]! * sin;
}

/** The leg lifted from the same picture with other lengths, and with the focal length scaled by a factor. */
function liftAgain(moved: LiftedLeg, at: LiftedLeg, shank: number, thigh: number, focalBy: number): void {
  // Through a longer lens the person is farther away, as wide and high as before.
  moved.ankle.z[0]! *= focalBy;
  moved.thigh = thigh;
  const { knee, hip } = at;
  const kneeScale = 1 / knee.z[0]! / focalBy;
  const hipScale = 1 / hip.z[0]! / focalBy;
  placeOnRay(moved.knee, 0, knee.x[0]! * kneeScale, knee.y[0]! * kneeScale, moved.ankle, shank, -1);
  placeOnRay(moved.hip, 0, hip.x[0]! * hipScale, hip.y[0]! * hipScale, moved.knee, thigh, 1);
}

/** Turns the leg as seen by a camera rolled by this angle. */
function roll(leg: LiftedLeg, cos: number, sin: number): void {
  for (const joint of joints) {
    const { x, y } = leg[joint];
    const [right, down] = [x[0]!, y[0]!];
    x[0] = right * cos - down * sin;
    y[0] = down * cos + right * sin;
  }
}

/** Turns the leg as seen by a camera pitched by this angle. */
function pitch(leg: LiftedLeg, cos: number, sin: number): void {
  for (const joint of joints) {
    const { y, z } = leg[joint];
    const [down, ahead] = [y[0]!, z[0]!];
    y[0] = down * cos - ahead * sin;
    z[0] = ahead * cos + down * sin;
  }
}
