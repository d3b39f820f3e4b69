import { frameCount, type KeypointTrack } from '../keypoints/keypointTrack';
import { hasPerson } from '../keypoints/observedPoint';
import type { Curve, MissingReason } from './curve';
import { doubtSide } from './doubtSide';
import type { Facing } from './findFacing';
import type { MeasuredRepetition, MeasurementNote, Setup } from './measurement';
import { summarise } from './measureRepetition';
import type { View } from './seeView';
import type { SmoothPoints } from './smoothPoints';

/** Below this frame rate a fast repetition falls between the frames, Hz: common practice, no source. */
export const leastFrameRateHz = 15;
/** With a person in less than this share of the frames, nobody was filmed. */
const leastPersonShare = 0.1;

/** What the person should know before trusting the numbers. */
export function collectNotes(
  track: KeypointTrack,
  setup: Setup,
  points: SmoothPoints,
  legCurve: Curve,
  legLengthPx: number | null,
  view: View | null,
  facing: Facing,
  repetitions: readonly MeasuredRepetition[],
): MeasurementNote[] {
  const frames = frameCount(track);
  let framesWithPerson = 0;
  for (let frame = 0; frame < frames; frame++) if (hasPerson(track, frame)) framesWithPerson++;
  if (frames === 0 || framesWithPerson < leastPersonShare * frames) {
    return [{ kind: 'no-person', framesWithPerson, frames }];
  }
  const notes: MeasurementNote[] = [];
  if (points.jumpedFrames > 0) notes.push({ kind: 'somebody-else', frames: points.jumpedFrames });
  if (Math.round(points.frameRateHz) < leastFrameRateHz)
    notes.push({ kind: 'few-frames', frameRateHz: points.frameRateHz });
  const unseen = mostlyMissing(legCurve);
  if (unseen !== null && unseen !== 'view-turned') notes.push({ kind: 'legs-not-seen', reason: unseen });
  if (repetitions.length === 0) notes.push({ kind: 'no-repetitions' });
  // A picture on its side says nothing of which foot is nearer, a view read from the wrong leg nothing at all.
  const isSideDoubtful = facing !== 'tipped' && doubtSide(points, setup, legLengthPx, repetitions);
  if (isSideDoubtful) notes.push({ kind: 'side-doubtful', side: setup.side });
  if (facing !== 'front') notes.push({ kind: 'not-facing', facing });
  else if (view?.isTurned && !isSideDoubtful)
    notes.push({ kind: 'view-turned', yawDeg: view.yaw.yawDeg, sdDeg: view.yaw.sdDeg });
  return notes;
}

/** The main reason where a curve is missing for more than half of the time, otherwise null. */
function mostlyMissing(curve: Curve): MissingReason | null {
  const { measuredShare, mainReason } = summarise(curve, new Float64Array(), 0, curve.values.length - 1);
  return measuredShare < 0.5 ? mainReason : null;
}
