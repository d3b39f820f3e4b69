import { findTask } from '../exercises/exercises';
import type { KeypointTrack } from '../keypoints/keypointTrack';
import { mapMeasures } from '../measures/measures';
import { findRepetitions, type FoundRepetition } from '../segmentation/findRepetitions';
import { inPlace } from '../segmentation/inPlace';
import { scaleToExcursion } from '../segmentation/scaleToExcursion';
import { focalLengthPx } from '../view/focalLengthPx';
import { segmentsPx } from '../view/liftLeg';
import { bodyHeights } from './bodyHeights';
import { cameraRoll } from './cameraRoll';
import { collectNotes } from './collectNotes';
import { feetPaths } from './feetPaths';
import { findFacing } from './findFacing';
import { findView } from './findView';
import { freeFootAside } from './freeFootAside';
import { levelPoints } from './levelPoints';
import { measuringVersion, type Measurement, type Setup } from './measurement';
import { measureRepetition } from './measureRepetition';
import { pictureLeg } from './pictureLeg';
import { restMoments } from './restMoments';
import { seeBody, unseenSeries } from './seenBody';
import { smoothPoints } from './smoothPoints';
import { legLengthPx } from './viewedLeg';

/** May replace the repetitions that were found, on the uniform times, ms. */
export type Arrange = (found: FoundRepetition[], timesMs: Float64Array) => FoundRepetition[];

/**
 * Measures a recording whose set begins at a known time, with what is known of the view.
 *
 * @param track  observed joints, never changed
 * @param setup  task and working side, the person's own
 * @param fromMs  what was done before it shows the body, but is no repetition; 0 = all counts
 * @param arrange  may replace the repetitions found, on the uniform times, ms
 * @param seen  the track's points, where they have been smoothed before
 */
export function measureKnown(
  track: KeypointTrack,
  setup: Setup,
  fromMs = 0,
  arrange: Arrange = (found) => found,
  seen = smoothPoints(track),
): Measurement {
  const task = findTask(setup.task);
  // Good enough to find the moments in which the person stands. These give the length that scales everything
  // else.
  const longest = segmentsPx(pictureLeg(seen, setup.side, track));
  const roughLengthPx = longest === null ? null : legLengthPx({ segments: longest });
  const heights = bodyHeights(seen, roughLengthPx);
  const feet = feetPaths(seen, roughLengthPx);
  const movement = task.shape === 'reach' ? freeFootAside(seen, setup.side, roughLengthPx) : heights.hips;
  const counted = inPlace(feet, seen.timesMs.length).map((value, i) =>
    seen.timesMs[i]! < fromMs ? 0 : value,
  );
  const excursion = scaleToExcursion(task, movement, counted);
  const moments = restMoments(task, excursion, seen.timesMs.length);
  const roll = cameraRoll(seen, moments.upright);
  const focalPx = focalLengthPx(track.widthPx, track.heightPx);
  // In a reach the leg stays bent: no moment of it is certain to be standing.
  const standing = task.shape === 'reach' ? undefined : moments.upright;
  const size = { widthPx: track.widthPx, heightPx: track.heightPx };
  const facing = findFacing(seen, setup.side, task.onBothFeet);
  const { points, view: found } = findView(levelPoints(seen, roll.rollDeg, track), {
    size,
    focalPx,
    task,
    side: setup.side,
    roll,
    moments,
    standing,
    bends: setup.bends,
    isExact: track.isExact,
  });
  const view = found === null || facing === 'front' ? found : { ...found, isTurned: true };
  const lengthPx = view === null ? null : legLengthPx(view.working);
  const body = view === null ? null : seeBody(points, view, setup.side, track.closer?.untilMs);
  const unseen = unseenSeries(points, setup.side);
  const series = mapMeasures((_, measured) => (body === null ? unseen : measured.series(body)));
  const signals = {
    timesMs: points.timesMs,
    excursion: excursion ?? [],
    shoulderHeight: heights.shoulders,
    feet,
  };
  const moved = findRepetitions(task, signals).filter(({ events }) => events.startMs >= fromMs);
  const repetitions = arrange(moved, points.timesMs).map((one, index) =>
    measureRepetition(one, index + 1, points.timesMs, series),
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
    notes: collectNotes(
      track,
      setup,
      points,
      series['knee-off-line'].curve,
      lengthPx,
      view,
      facing,
      repetitions,
    ),
  };
}
