import { keypointNames, type KeypointName } from '#core/keypoints/keypointNames';
import { sides, type Side } from '#core/protocol/side';
import {
  bow,
  cross,
  distance,
  dot,
  lean,
  minus,
  plus,
  times,
  toRad,
  turn,
  unit,
  vector,
  type Vector,
} from './space';

/** Lengths as shares of body height; legs, arms and trunk after Drillis & Contini, the rest by eye. */
export const proportions = {
  thigh: 0.245,
  shank: 0.246,
  ankleHeight: 0.039,
  trunk: 0.288,
  upperArm: 0.186,
  forearm: 0.146,
  halfHips: 0.055,
  halfShoulders: 0.11,
  head: 0.13,
};

/** Position and direction of a foot. */
export interface FootPlace {
  ankle: Vector;
  toeOutDeg: number;
  /** Heel lifted about the toes. */
  heelUpDeg: number;
}

/** Everything that changes from one instant of the body to another; lengths as shares of body height. */
export interface Posture {
  /** Middle between the hip joints. */
  hips: Vector;
  /** Positive = left hip lower. */
  pelvisLeftDownDeg: number;
  trunkForwardDeg: number;
  trunkLeftDeg: number;
  feet: Record<Side, FootPlace>;
  /** Frontal-plane projection angle of each knee, inward positive. */
  kneeInwardDeg: Record<Side, number>;
}

export type Body = Record<KeypointName, Vector>;

/**
 * Places every joint of a body; the joints of a limb keep their distances in every posture.
 *
 * @returns  m, y up, the person faces +z with the left side at +x
 * @throws RangeError where a leg can't reach its foot, or is too straight for the knee angle asked for
 */
export function poseBody(posture: Posture, bodyHeightM: number): Body {
  const p = proportions;
  const inTrunk = (place: Vector) =>
    plus(posture.hips, lean(bow(place, posture.trunkForwardDeg), posture.trunkLeftDeg));
  const head = (x: number, y: number, z: number) => inTrunk(vector(x, p.trunk + p.head + y, z));
  const places: Partial<Body> = {
    nose: head(0, 0, 0.06),
    left_eye_inner: head(0.009, 0.02, 0.05),
    left_eye: head(0.018, 0.021, 0.047),
    left_eye_outer: head(0.026, 0.02, 0.042),
    right_eye_inner: head(-0.009, 0.02, 0.05),
    right_eye: head(-0.018, 0.021, 0.047),
    right_eye_outer: head(-0.026, 0.02, 0.042),
    left_ear: head(0.043, 0.008, 0),
    right_ear: head(-0.043, 0.008, 0),
    mouth_left: head(0.014, -0.022, 0.05),
    mouth_right: head(-0.014, -0.022, 0.05),
  };
  for (const side of sides) {
    const outward = side === 'left' ? 1 : -1;
    const put = (name: Limb, place: Vector) => (places[limbNames[side][name]] = place);
    const { hip, knee, ankle } = legOf(posture, side);
    const { toeOutDeg, heelUpDeg } = posture.feet[side];
    put('hip', hip);
    put('ankle', ankle);
    put('knee', knee);
    const inFoot = (place: Vector) => plus(ankle, turn(bow(place, heelUpDeg), outward * toeOutDeg));
    put('heel', inFoot(vector(0, -0.024, -0.024)));
    // The network marks the big toe, which is inward of the foot's axis, half of a shank in front of the heel.
    put('foot_index', inFoot(vector(-outward * 0.0113, -0.027, 0.0933)));

    const shoulder = put('shoulder', inTrunk(vector(outward * p.halfShoulders, p.trunk, 0)));
    // Hands on hips, elbows pointing out and a little back.
    const wrist = put('wrist', inTrunk(vector(outward * 0.09, 0.045, 0.02)));
    put('elbow', onCircle(bendCircle(shoulder, wrist, p.upperArm, p.forearm, vector(outward, 0, -0.5)), 0));
    put('pinky', plus(wrist, vector(-outward * 0.012, -0.03, 0.025)));
    put('index', plus(wrist, vector(-outward * 0.02, -0.02, 0.036)));
    put('thumb', plus(wrist, vector(-outward * 0.014, -0.005, 0.025)));
  }
  const body = places as Body;
  for (const name of keypointNames) body[name] = times(body[name], bodyHeightM);
  return body;
}

const limbs = [
  'hip',
  'knee',
  'ankle',
  'heel',
  'foot_index',
  'shoulder',
  'elbow',
  'wrist',
  'pinky',
  'index',
  'thumb',
] as const;
type Limb = (typeof limbs)[number];
/** Put together once: a film poses a body some hundred times. */
const limbNames = Object.fromEntries(
  sides.map((side) => [side, Object.fromEntries(limbs.map((limb) => [limb, `${side}_${limb}`]))]),
) as Record<Side, Record<Limb, KeypointName>>;

/** Hip, knee and ankle of one leg alone, as poseBody places them, m. */
export function poseLeg(posture: Posture, side: Side, bodyHeightM: number): Vector[] {
  const { hip, knee, ankle } = legOf(posture, side);
  return [hip, knee, ankle].map((place) => times(place, bodyHeightM));
}

function legOf(posture: Posture, side: Side): Record<'hip' | 'knee' | 'ankle', Vector> {
  const outward = side === 'left' ? 1 : -1;
  const hip = plus(
    posture.hips,
    lean(vector(outward * proportions.halfHips, 0, 0), posture.pelvisLeftDownDeg),
  );
  const { ankle } = posture.feet[side];
  return { hip, knee: findKnee(hip, ankle, posture.kneeInwardDeg[side], side), ankle };
}

/**
 * The angle that the synthetic person is built on, computed without the product's own formula: how far the
 * direction of the shank is turned from that of the thigh.
 *
 * @param joints  hip, knee, ankle with y up, in whichever plane the angle is asked for
 * @returns  degrees, -180 to 180, inward positive where the left leg is at larger x
 */
export function inwardAngleDeg([hip, knee, ankle]: readonly { x: number; y: number }[], side: Side): number {
  const turned = ((fromDownRad(knee!, ankle!) - fromDownRad(hip!, knee!)) * 180) / Math.PI;
  const wrapped = turned > 180 ? turned - 360 : turned < -180 ? turned + 360 : turned;
  return side === 'left' ? wrapped : -wrapped;
}

function fromDownRad(from: { x: number; y: number }, to: { x: number; y: number }): number {
  return Math.atan2(to.x - from.x, from.y - to.y);
}

/** The knee is on the circle around the line from hip to ankle, turned so far that the frontal angle is as wanted. */
function findKnee(hip: Vector, ankle: Vector, wantedDeg: number, side: Side): Vector {
  const circle = bendCircle(hip, ankle, proportions.thigh, proportions.shank, vector(0, 0, 1));
  const inward = side === 'left' ? -1 : 1;
  const angleAt = (turnRad: number) => inwardAngleDeg([hip, onCircle(circle, inward * turnRad), ankle], side);
  let [low, high] = [toRad(-75), toRad(75)];
  for (let step = 0; step < 40; step++) {
    const half = (low + high) / 2;
    if (angleAt(half) < wantedDeg) low = half;
    else high = half;
  }
  if (Math.abs(angleAt(low) - wantedDeg) > 0.001) {
    throw new RangeError(`A leg bent this little can't show ${wantedDeg} degrees, only ${angleAt(low)}.`);
  }
  return onCircle(circle, inward * low);
}

/** Where the joint between two limb segments can be once their ends are known. */
interface BendCircle {
  centre: Vector;
  /** From the centre to the circle, towards where the joint bends and, facing that way, to the left. */
  ahead: Vector;
  aside: Vector;
}

/** @param towards  direction in which the joint bends */
function bendCircle(top: Vector, bottom: Vector, upper: number, lower: number, towards: Vector): BendCircle {
  const reach = distance(top, bottom);
  if (reach > upper + lower) {
    throw new RangeError(`Segments of ${upper} and ${lower} can't span ${reach} (shares of body height).`);
  }
  const axis = unit(minus(bottom, top));
  const ahead = unit(minus(towards, times(axis, dot(towards, axis))));
  const along = (upper ** 2 - lower ** 2 + reach ** 2) / (2 * reach);
  const radius = Math.sqrt(Math.max(0, upper ** 2 - along ** 2));
  return {
    centre: plus(top, times(axis, along)),
    ahead: times(ahead, radius),
    aside: times(cross(ahead, axis), radius),
  };
}

function onCircle({ centre, ahead, aside }: BendCircle, turnRad: number): Vector {
  const [cos, sin] = [Math.cos(turnRad), Math.sin(turnRad)];
  return vector(
    centre.x + ahead.x * cos + aside.x * sin,
    centre.y + ahead.y * cos + aside.y * sin,
    centre.z + ahead.z * cos + aside.z * sin,
  );
}
