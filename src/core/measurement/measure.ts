import { findTask } from '../exercises/exercises';
import type { KeypointTrack } from '../keypoints/keypointTrack';
import { mapMeasures } from '../measures/measures';
import { otherSide, type Side } from '../protocol/side';
import { findRepetitions, type FoundRepetition } from '../segmentation/findRepetitions';
import { inPlace } from '../segmentation/inPlace';
import { scaleToExcursion } from '../segmentation/scaleToExcursion';
import { focalLengthPx } from '../view/focalLengthPx';
import { segmentsPx } from '../view/liftLeg';
import { bodyHeights } from './bodyHeights';
import { cameraRoll } from './cameraRoll';
import { collectNotes } from './collectNotes';
import { feetPaths } from './feetPaths';
import { freeFootAside } from './freeFootAside';
import { levelPoints } from './levelPoints';
import { measuringVersion, type Measurement, type Setup } from './measurement';
import { measureRepetition } from './measureRepetition';
import { pictureLeg } from './pictureLeg';
import { restMoments } from './restMoments';
import { seeBody, unseenSeries } from './seenBody';
import { seeView } from './seeView';
import { smoothPoints } from './smoothPoints';
import { legLengthPx, viewedLeg } from './viewedLeg';

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
  const points = levelPoints(seen, roll.rollDeg, track);
  const focalPx = focalLengthPx(track.widthPx, track.heightPx);
  // In a reach the leg stays bent: no moment of it is certain to be standing.
  const standing = task.shape === 'reach' ? undefined : moments.upright;
  const leg = (side: Side) => viewedLeg(points, side, track, focalPx, standing);
  const working = leg(setup.side);
  const lengthPx = working === null ? null : legLengthPx(working);
  const view =
    working === null
      ? null
      : seeView(working, leg(otherSide(setup.side)), task, setup.side, focalPx, roll, moments, setup.bends);
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
