import { unseenRoll } from '#core/measurement/cameraRoll';
import type { Side } from '#core/protocol/side';
import { cosSin } from '#core/view/bodyFrame';
import { errorBand } from '#core/view/errorBand';
import { frontalKneeAngleDeg, medianWhere } from '#core/view/frontalKneeAngle';
import type { YawEstimate } from '#core/view/fuseCues';
import type { LiftedLeg } from '#core/view/liftLeg';
import type { ViewedLeg } from '#core/view/measureViewCues';
import type { Path } from '#core/view/path';

/**
 * Bends on the way of these tasks, from straight to deep: how far the shank leans forward and the thigh back,
 * degrees; common practice, no source. A straight leg seen from its side shows its depth least.
 */
const bends = [
  { shankDeg: 0, thighDeg: 0 },
  { shankDeg: 12, thighDeg: 18 },
  { shankDeg: 30, thighDeg: 45 },
];

/**
 * Half-width of the widest error band that a bend of this leg would have from here, by the function that
 * computes the band.
 *
 * @param yaw  what the set's recording is expected to read
 * @param jitter  trembling of the joints after smoothing, in shank lengths
 * @returns  degrees
 */
export function expectBandDeg(
  { lifted, picture }: ViewedLeg,
  side: Side,
  { yawDeg, sdDeg }: YawEstimate,
  jitter: number,
): number {
  const ankle = {
    x: medianWhere(picture.seen, (i) => lifted.ankle.x[i]!) ?? 0,
    y: medianWhere(picture.seen, (i) => lifted.ankle.y[i]!) ?? 0,
    z: medianWhere(picture.seen, (i) => lifted.ankle.z[i]!) ?? 1,
  };
  const sources = { yawDeg, yawSdDeg: sdDeg, rollSdDeg: unseenRoll.sdDeg, jitter };
  const bands = bends.map(({ shankDeg, thighDeg }) => {
    const knee = leaning(ankle, yawDeg, shankDeg, 1);
    const hip = leaning(knee, yawDeg, -thighDeg, lifted.thigh);
    const leg: LiftedLeg = { hip: one(hip), knee: one(knee), ankle: one(ankle), thigh: lifted.thigh };
    return errorBand(leg, side, sources, frontalKneeAngleDeg)(0).whole;
  });
  return Math.max(...bands);
}

interface Place {
  x: number;
  y: number;
  z: number;
}

/** The upper end of a segment that leans the way the body faces (positive) or back. */
function leaning({ x, y, z }: Place, yawDeg: number, leanDeg: number, length: number): Place {
  const [cosYaw, sinYaw] = cosSin(yawDeg);
  const [cosLean, sinLean] = cosSin(leanDeg);
  const ahead = length * sinLean;
  return { x: x + ahead * sinYaw, y: y - length * cosLean, z: z - ahead * cosYaw };
}

function one({ x, y, z }: Place): Path {
  return { x: Float64Array.of(x), y: Float64Array.of(y), z: Float64Array.of(z) };
}
