import { findTask } from '../exercises/exercises';
import type { KeypointTrack } from '../keypoints/keypointTrack';
import { mapMeasures } from '../measures/measures';
import { otherSide, type Side } from '../protocol/side';
import { findRepetitions, type FoundRepetition } from '../segmentation/findRepetitions';
import { inPlace } from '../segmentation/inPlace';
import { scaleToExcursion } from '../segmentation/scaleToExcursion';
import { focalLengthPx } from '../view/focalLengthPx';
import { squareToBody } from '../view/frontalKneeAngle';
import { segmentsPx } from '../view/liftLeg';
import { bodyHeights } from './bodyHeights';
import { cameraRoll } from './cameraRoll';
import { collectNotes } from './collectNotes';
import { feetPaths } from './feetPaths';
import { freeFootAside } from './freeFootAside';
import { hipsAtJoint } from './hipsAtJoint';
import { levelPoints } from './levelPoints';
import { measuringVersion, type Measurement, type Setup } from './measurement';
import { measureRepetition } from './measureRepetition';
import { pictureLeg } from './pictureLeg';
import { restMoments } from './restMoments';
import { seeBody, unseenSeries } from './seenBody';
import { seeView, type View } from './seeView';
import { smoothPoints, type SmoothPoints } from './smoothPoints';
import { legLengthPx, viewedLeg } from './viewedLeg';

/** Yaw and hips depend on each other; after this many rounds neither moves any more (docs/view.md). */
const hipRounds = 4;

/**
 * Measures a recording: from the joints seen in each frame to repetitions with their angles.
 *
 * Frame:   the body's frontal plane; how far the body is turned from the camera is estimated from the
 *          recording
 * @param track  observed joints, never changed
 * @param setup  task and working side, the person's own
 * @param arrange  may replace the repetitions found, on the uniform times, ms
 * @returns  curves on a uniform time base, repetitions, and notes on what to know before trusting them
 */
export function measure(
  track: KeypointTrack,
  setup: Setup,
  arrange: (found: FoundRepetition[], timesMs: Float64Array) => FoundRepetition[] = (found) => found,
): Measurement {
  const task = findTask(setup.task);
  const seen = smoothPoints(track);
  // Good enough to find the moments in which the person stands. These give the length that scales everything
  // else.
  const longest = segmentsPx(pictureLeg(seen, setup.side, track));
  const roughLengthPx = longest === null ? null : legLengthPx({ segments: longest });
  const heights = bodyHeights(seen, roughLengthPx);
  const feet = feetPaths(seen, roughLengthPx);
  const movement = task.shape === 'reach' ? freeFootAside(seen, setup.side, roughLengthPx) : heights.hips;
  const excursion = scaleToExcursion(task, movement, inPlace(feet, seen.timesMs.length));
  const moments = restMoments(task, excursion, seen.timesMs.length);
  const roll = cameraRoll(seen, moments.upright);
  const levelled = levelPoints(seen, roll.rollDeg, track);
  const focalPx = focalLengthPx(track.widthPx, track.heightPx);
  // In a reach the leg stays bent: no moment of it is certain to be standing.
  const standing = task.shape === 'reach' ? undefined : moments.upright;
  const size = { widthPx: track.widthPx, heightPx: track.heightPx };
  const leg = (from: SmoothPoints, side: Side) => viewedLeg(from, side, size, focalPx, standing);
  /** How the body is turned, with the hips where a first estimate of it puts them. */
  const look = (before: View | null, isRaised: boolean) => {
    const placed =
      before === null || track.isExact === true
        ? levelled
        : hipsAtJoint(levelled, size, {
            yawDeg: before.yaw.yawDeg,
            focalPx,
            shankPx: before.working.segments.shank,
            thighPx: before.working.segments.thigh,
            isRaised,
          });
    const working = leg(placed, setup.side);
    if (working === null) return { placed, working, view: null };
    const other = leg(placed, otherSide(setup.side));
    const view = seeView(working, other, task, setup.side, focalPx, roll, moments, setup.bends);
    return { placed, working, view };
  };
  let view: View | null = null;
  for (let round = 0; round < hipRounds; round++) view = look(view, false).view;
  const { placed: points, working, view: raised } = look(view, true);
  const lengthPx = working === null ? null : legLengthPx(working);
  if (view !== null && raised !== null)
    view = {
      ...raised,
      yaw: view.yaw,
      frontal: squareToBody(raised.working.lifted, view.yaw.yawDeg),
      isTurned: view.isTurned,
      sources: view.sources,
    };
  const body = view === null ? null : seeBody(points, view, setup.side);
  const unseen = unseenSeries(points, setup.side);
  const series = mapMeasures((_, measured) => (body === null ? unseen : measured.series(body)));
  const signals = {
    timesMs: points.timesMs,
    excursion: excursion ?? [],
    shoulderHeight: heights.shoulders,
    feet,
  };
  const repetitions = arrange(findRepetitions(task, signals), points.timesMs).map((found, index) =>
    measureRepetition(found, index + 1, points.timesMs, series),
  );
  return {
    version: measuringVersion,
    setup,
    timesMs: points.timesMs,
    rateHz: points.rateHz,
    legLengthPx: lengthPx,
    view:
      view === null || body === null
        ? null
        : { focalPx, ...view.yaw, rollDeg: roll.rollDeg, standingOffsetDeg: body.standingOffsetDeg },
    curves: mapMeasures((id) => series[id].curve),
    repetitions,
    notes: collectNotes(track, setup, points, series['knee-off-line'].curve, lengthPx, view, repetitions),
  };
}
