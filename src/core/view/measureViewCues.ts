import type { ViewSign } from '../exercises/exercise';
import { otherSide, outwardSign, type Side } from '../protocol/side';
import type { BendsView } from './bendsView';
import { footHeadingDeg } from './footHeadingDeg';
import { placeOnRay, type LiftedLeg, type PictureJoint, type PictureLeg, type SegmentsPx } from './liftLeg';
import { medianHeadingDeg } from './medianHeadingDeg';
import { emptyPath } from './path';
import type { ViewCue } from './viewCue';

/** A leg with what is needed to find where it points. */
export interface ViewedLeg {
  picture: PictureLeg;
  segments: SegmentsPx;
  lifted: LiftedLeg;
  heel: PictureJoint;
  toe: PictureJoint;
  /** 1 a sample where heel and toe were seen. */
  footSeen: Uint8Array;
  /** Jitter of its joints after smoothing, one standard deviation, in shank lengths. */
  jitter: number;
}

export interface ViewScene {
  legs: Record<Side, ViewedLeg>;
  workingSide: Side;
  focalPx: number;
  /** 1 a sample where the person stands upright. */
  upright: Uint8Array;
  /** 1 a sample where the knees are bent most: seated, or at the bottom. */
  bent: Uint8Array;
  /** What two-legged bends before this recording showed; the camera has not moved since. */
  bends?: BendsView | undefined;
}

/**
 * Usual error of each reading, degrees: set with all the recordings and the motion capture in view
 * (docs/view.md). Only part of the thighs' error counts: most of it is the joints' own placing, which turns
 * the measured angle the same way and cancels; how far hips are behind their marks differs between people, which
 * adds 0.4 at a yaw of 10. The stance foot's is mostly the spread of toe-out between
 * people. A person asked to face the camera: common practice, no source.
 */
export const usualSdDeg: Record<Exclude<ViewCue['name'], 'bends'>, number> = {
  thighs: 1.2,
  feet: 3.5,
  'free-shank': 2.5,
  'stance-foot': 4,
  'facing-camera': 14,
};

/**
 * How far the body turns between bends and set, and half of the difference in how body and foot are then
 * placed, degrees, one standard deviation. Ten people of the motion-capture set put a foot down again 3.5 to
 * 4.2 degrees differently relative to their pelvis. How far they turn: common practice, no source.
 */
const carriedSdDeg = { footUnseen: 3, footSeen: 2.3 };

/** How far people turn a foot out, degrees: common practice, no source. */
const usualToeOutDeg = 7;

/**
 * Reads all signs of the view that a task offers; one that is never seen is left out. Known bends before the
 * set replace the stance foot, whose toe-out differs between people.
 */
export function measureViewCues(scene: ViewScene, signs: readonly ViewSign[]): ViewCue[] {
  const cues: ViewCue[] = [{ name: 'facing-camera', yawDeg: 0, sdDeg: usualSdDeg['facing-camera'] }];
  for (const name of signs) {
    if (name === 'stance-foot' && scene.bends !== undefined) {
      cues.push(bendsCue(scene, scene.bends));
      continue;
    }
    const yawDeg = readSign[name](scene);
    if (yawDeg !== null) cues.push({ name, yawDeg, sdDeg: usualSdDeg[name] });
  }
  return cues;
}

/**
 * The yaw of the bends, carried over to this recording. A stance foot that points elsewhere than it did may
 * have turned with the body or been put down differently; the two can't be distinguished, so the yaw follows it
 * half of the way.
 */
function bendsCue(scene: ViewScene, bends: BendsView): ViewCue {
  const { workingSide } = scene;
  const before = bends.footDeg[workingSide];
  const now = sceneFootDeg(scene, workingSide);
  const isSeen = before !== null && now !== null;
  return {
    name: 'bends',
    yawDeg: bends.yawDeg + (isSeen ? (now - before) / 2 : 0),
    sdDeg: Math.hypot(bends.sdDeg, isSeen ? carriedSdDeg.footSeen : carriedSdDeg.footUnseen),
  };
}

const readSign: Record<ViewSign, (scene: ViewScene) => number | null> = {
  /** Bent with both feet on the floor, the thighs open to either side of straight ahead: their middle points ahead. */
  thighs: ({ legs, bent }) => middle(thighHeadingDeg(legs.left, bent), thighHeadingDeg(legs.right, bent)),

  /** Standing on both feet, their middle points ahead. */
  feet: (scene) => middle(sceneFootDeg(scene, 'left'), sceneFootDeg(scene, 'right')),

  /** One foot turns out by the usual amount. */
  'stance-foot': (scene) => {
    const deg = sceneFootDeg(scene, scene.workingSide);
    return deg === null ? null : deg - outwardSign(scene.workingSide) * usualToeOutDeg;
  },

  /** The lifted leg hangs from the hip and bends straight back: away from its shank is ahead. */
  'free-shank': (scene) => freeShankDeg(scene),
};

function thighHeadingDeg({ lifted, picture }: ViewedLeg, when: Uint8Array): number | null {
  return medianHeadingDeg(lifted.hip, lifted.knee, both(when, picture.seen));
}

function sceneFootDeg({ legs, upright, focalPx }: ViewScene, side: Side): number | null {
  return footOfLegDeg(legs[side], side, upright, focalPx);
}

/** How the axis of a leg's foot points, degrees, as footHeadingDeg returns it; null where it is never seen. */
export function footOfLegDeg(
  { heel, toe, footSeen, segments }: ViewedLeg,
  side: Side,
  when: Uint8Array,
  focalPx: number,
): number | null {
  return footHeadingDeg(heel, toe, side, both(when, footSeen), segments.shank, focalPx);
}

function freeShankDeg({ legs, workingSide, focalPx }: ViewScene): number | null {
  const working = legs[workingSide];
  const free = legs[otherSide(workingSide)];
  const samples = free.picture.seen.length;
  const seen = both(free.picture.seen, working.picture.seen);
  const [hip, knee, ankle] = [emptyPath(samples), emptyPath(samples), emptyPath(samples)];
  for (let i = 0; i < samples; i++) {
    if (seen[i] === 0) continue;
    // Both hips are about as far from the camera; the free leg hangs from there.
    const z = working.lifted.hip.z[i]!;
    hip.x[i] = (free.picture.hip.xPx[i]! / focalPx) * z;
    hip.y[i] = (free.picture.hip.yPx[i]! / focalPx) * z;
    hip.z[i] = z;
    const { knee: kneeSeen, ankle: ankleSeen } = free.picture;
    const toThigh = working.lifted.thigh;
    placeOnRay(knee, i, kneeSeen.xPx[i]! / focalPx, kneeSeen.yPx[i]! / focalPx, hip, toThigh, -1);
    placeOnRay(ankle, i, ankleSeen.xPx[i]! / focalPx, ankleSeen.yPx[i]! / focalPx, knee, 1, 1);
  }
  // From the ankle, behind, to the knee: the way the body faces.
  return medianHeadingDeg(ankle, knee, seen);
}

function both(a: Uint8Array, b: Uint8Array): Uint8Array {
  return a.map((value, i) => value & b[i]!);
}

function middle(a: number | null, b: number | null): number | null {
  return a === null || b === null ? null : (a + b) / 2;
}
