import type { ViewSign } from '#core/exercises/exercise';
import { findTask, type Task } from '#core/exercises/exercises';
import { distancePx } from '#core/geometry/point';
import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import { unseenRoll } from '#core/measurement/cameraRoll';
import type { MissingReason } from '#core/measurement/curve';
import { settleHips } from '#core/measurement/findView';
import type { Setup } from '#core/measurement/measurement';
import { summarise } from '#core/measurement/measureRepetition';
import { restMoments } from '#core/measurement/restMoments';
import { seeBody, unseenSeries } from '#core/measurement/seenBody';
import { seeView, type View } from '#core/measurement/seeView';
import { smoothPoints, type SmoothPoints } from '#core/measurement/smoothPoints';
import { legLengthPx, viewedLeg } from '#core/measurement/viewedLeg';
import { kneeOffLine } from '#core/measures/kneeOffLine';
import { otherSide, type Side } from '#core/protocol/side';
import { focalLengthPx } from '#core/view/focalLengthPx';
import { medianWhere } from '#core/view/frontalKneeAngle';
import type { YawEstimate } from '#core/view/fuseCues';
import { liftLeg } from '#core/view/liftLeg';
import type { ViewedLeg } from '#core/view/measureViewCues';
import { bodyExtent, type Extent } from './bodyExtent';
import { expectBandDeg } from './expectBandDeg';
import { expectYaw } from './expectYaw';
import type { PlacingFacts } from './placing';
import { uprightness } from './uprightness';

/** Thigh over shank where no quiet stand has shown it; Drillis & Contini, from memory: .245 / .246 of body height. */
const usualThighToShank = 0.245 / 0.246;
/** Both legs are equally long; the one behind looks shorter by no more than this for being farther away. */
const leastOfOther = 0.9;
/** Thigh plus shank over the torso from hips to shoulders, the same source: (.245 + .246) / .288. */
const legToTorso = 1.7;
/** With less of the window measured than this, a set would lose too much. */
const leastShareToBegin = 0.8;
/** A posture counts when it fills this share of the window. */
const leastPostureShare = 0.5;
/** A foot this much higher than the other, share of leg length, is lifted: it does not say where the body faces. */
const liftedShare = 0.12;

/** The input of all checks: one to two seconds of a person, seen through the functions that measure. */
export interface Sight {
  track: KeypointTrack;
  setup: Setup;
  task: Task;
  facts: PlacingFacts;
  points: SmoothPoints;
  focalPx: number;
  /** Null where nobody was seen for most of the window. */
  extent: Extent | null;
  legs: Record<Side, ViewedLeg | null>;
  /**
   * Thigh plus shank of the working leg as they would look upright, px; inferred from the torso where the leg
   * is unseen.
   */
  legPx: number | null;
  posture: 'standing' | 'seated' | 'between';
  /** How the body stands to the camera; null where the working leg was never seen. */
  view: View | null;
  /** How well the set's own recording will tell the yaw, as far as it shows already. */
  expected: { yaw: YawEstimate; bandDeg: number; stillBandDeg: number } | null;
  /** Share of the window in which the working leg can be measured, 0 to 1. */
  measuredShare: number;
  /** The main reason why the working leg could not be measured for much of the window; null where it could. */
  obstacle: MissingReason | null;
}

/** Measures a window of joints the way a recording of the set would be measured. */
export function sightOf(track: KeypointTrack, setup: Setup, facts: PlacingFacts): Sight {
  const task = findTask(setup.task);
  const marks = smoothPoints(track);
  const focalPx = focalLengthPx(track.widthPx, track.heightPx);
  const ratioOf = (side: Side) => {
    const known = facts.quietStand?.segmentsPx[side];
    return known === undefined ? usualThighToShank : known.thigh / known.shank;
  };
  const look = (points: SmoothPoints) => {
    const seen = {
      left: viewedLeg(points, 'left', track, focalPx),
      right: viewedLeg(points, 'right', track, focalPx),
    };
    const leg = (side: Side) =>
      withLengths(seen[side], seen[otherSide(side)]?.segments.shank ?? 0, ratioOf(side), focalPx);
    const legs = { left: leg('left'), right: leg('right') };
    const working = legs[setup.side];
    const postures = uprightness(legs, points.timesMs.length);
    const view = working === null ? null : seeStill(working, legs, postures, setup, task, focalPx);
    return { points, legs, working, postures, view };
  };
  const { isExact } = track;
  const { points, legs, working, postures, view } = settleHips(
    marks,
    { size: track, focalPx, isExact },
    look,
  );
  const extent = bodyExtent(track);
  const { curve } =
    view === null ? unseenSeries(points, setup.side) : kneeOffLine.series(seeBody(points, view, setup.side));
  const { measuredShare, mainReason } = summarise(curve, points.timesMs, 0, points.timesMs.length - 1);
  return {
    track,
    setup,
    task,
    facts,
    points,
    focalPx,
    extent,
    legs,
    legPx: working === null ? torsoLegPx(extent) : legLengthPx(working),
    posture: mainPosture(postures),
    view,
    expected: view === null ? null : expect(view, legs, setup, task, focalPx),
    measuredShare,
    obstacle: measuredShare < leastShareToBegin ? mainReason : null,
  };
}

/**
 * A seated thigh points at the camera: its length is then inferred from the shank. A shank that points away,
 * as that of a foot under the seat does, is as long as the other.
 */
function withLengths(
  leg: ViewedLeg | null,
  otherShankPx: number,
  thighToShank: number,
  focalPx: number,
): ViewedLeg | null {
  if (leg === null) return null;
  const shank = Math.max(leg.segments.shank, leastOfOther * otherShankPx);
  const segments = { shank, thigh: Math.max(leg.segments.thigh, shank * thighToShank) };
  return { ...leg, segments, lifted: liftLeg(leg.picture, segments, focalPx) };
}

function torsoLegPx(extent: Extent | null): number | null {
  if (extent === null) return null;
  const { hips, shoulders } = extent;
  return legToTorso * distancePx(hips, shoulders);
}

/** The view of somebody who sits or stands, whatever the task: by the thighs where seated, by both feet where standing. */
function seeStill(
  working: ViewedLeg,
  legs: Record<Side, ViewedLeg | null>,
  postures: Float64Array,
  { side, bends }: Setup,
  task: Task,
  focalPx: number,
): View {
  const onOne = isFootLifted(legs);
  const signs: ViewSign[] = ['thighs', onOne ? 'stance-foot' : 'feet'];
  if (bends !== undefined && !onOne) signs.push('stance-foot');
  const { onBothFeet } = task;
  // Seated counts as at rest and upright as the far end, as in a task that rises.
  const moments = restMoments({ shape: 'rise' }, postures, postures.length);
  const how = { viewSigns: signs, onBothFeet };
  return seeView(working, legs[otherSide(side)], how, side, focalPx, unseenRoll, moments, bends);
}

function isFootLifted({ left, right }: Record<Side, ViewedLeg | null>): boolean {
  if (left === null || right === null) return true;
  const heightPx = ({ picture }: ViewedLeg) => medianWhere(picture.seen, (i) => picture.ankle.yPx[i]!) ?? 0;
  return Math.abs(heightPx(left) - heightPx(right)) > liftedShare * legLengthPx(left);
}

function expect(
  view: View,
  legs: Record<Side, ViewedLeg | null>,
  { side, bends }: Setup,
  { viewSigns }: Task,
  focalPx: number,
): Sight['expected'] {
  const { working, upright, bent, yaw: now } = view;
  const seen = { left: legs.left ?? working, right: legs.right ?? working };
  // A foot on the floor points the same way whether one sits or stands.
  const always = new Uint8Array(upright.length).fill(1);
  const scene = { legs: seen, workingSide: side, focalPx, upright: always, bent, bends };
  const yaw = expectYaw(scene, viewSigns, now);
  const bandDeg = (jitter: number) => expectBandDeg(working, side, yaw, jitter);
  return { yaw, bandDeg: bandDeg(working.jitter), stillBandDeg: bandDeg(0) };
}

function mainPosture(postures: Float64Array): Sight['posture'] {
  const least = leastPostureShare * postures.length;
  if (postures.filter((posture) => posture === 1).length > least) return 'standing';
  return postures.filter((posture) => posture === 0).length > least ? 'seated' : 'between';
}
