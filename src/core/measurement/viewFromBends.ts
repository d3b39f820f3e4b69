import { mean } from 'd3-array';
import { toDegrees } from '../geometry/degrees';
import type { KeypointTrack } from '../keypoints/keypointTrack';
import { depth as depthMeasure } from '../measures/depth';
import type { Side } from '../protocol/side';
import type { BendsView } from '../view/bendsView';
import { placingSd } from '../view/errorBand';
import { focalLengthPx } from '../view/focalLengthPx';
import { fuseCues } from '../view/fuseCues';
import { footOfLegDeg } from '../view/measureViewCues';
import { measureKnown } from './measureKnown';
import type { Measurement } from './measurement';
import { smoothPoints, type SmoothPoints } from './smoothPoints';
import { viewedLeg } from './viewedLeg';

/** Fewer complete bends than this do not count. */
const leastBends = 2;
/** Bends shallower than this share of leg length leave the thighs too upright to point anywhere. */
const leastDepth = 0.05;
/**
 * How unevenly thighs open to either side of straight ahead, degrees, one standard deviation: the spread of the yaw over
 * sit-to-stands of ten people, filmed square (docs/view.md). Within one recording most of it cancels; carried over to
 * another it does not.
 */
const openingSdDeg = 2.3;

export type BendsOutcome =
  | {
      view: BendsView;
      /** When the last bend was over, ms. */
      endMs: number;
      problem: null;
    }
  /** One sentence: why nothing can be inferred from the bends, and what to do. */
  | { view: null; problem: string };

/**
 * Infers the body's yaw to the camera from two easy two-legged bends, for a set that follows: what both knees
 * do alike there is view, not alignment. Hand the view on as `bends` of the set's setup.
 *
 * It only holds while the camera is not moved between the bends and the end of the set: not carried, tipped
 * or turned. Film the bends again if it was.
 *
 * @param track  the bends alone, with a moment of standing before and between them
 */
export function viewFromBends(track: KeypointTrack): BendsOutcome {
  const points = smoothPoints(track);
  const measurement = measureKnown(track, { task: 'two-legged-bend', side: 'left' }, 0, undefined, points);
  const bends = measurement.repetitions.filter(({ completeness }) => completeness === 'complete');
  if (bends.length < leastBends) {
    return none('Two bends were not seen. Bend both knees a little and stand up again, twice.');
  }
  const depth = mean(bends, ({ ranges }) => depthMeasure.peak(ranges.depth)?.value ?? 0)!;
  if (depth < leastDepth) return none('The bends were very small. Bend both knees a little more, twice.');
  if (!measurement.view?.cues.some(({ name }) => name === 'thighs')) {
    return none('Both legs were not seen all of the time. Move anything in front of them, then bend twice.');
  }
  const thighsSdDeg = Math.hypot(openingSdDeg, placedSdDeg(depth));
  const { yawDeg, sdDeg } = fuseCues(
    measurement.view.cues.map((cue) => (cue.name === 'thighs' ? { ...cue, sdDeg: thighsSdDeg } : cue)),
  );
  const view = { yawDeg, sdDeg, footDeg: standingFeetDeg(track, points, measurement) };
  return { view, endMs: bends.at(-1)!.events.endMs, problem: null };
}

function none(problem: string): BendsOutcome {
  return { view: null, problem };
}

/**
 * What the joints' placing makes of the middle of two thighs' directions, degrees: the less they are bent, the more.
 * Thigh and shank, about equally long, lean alike, so that the cosine of their lean is what is left of the height.
 */
function placedSdDeg(depth: number): number {
  const aheadShare = Math.sqrt(1 - (1 - depth) ** 2);
  return toDegrees(placingSd / aheadShare);
}

function standingFeetDeg(
  track: KeypointTrack,
  points: SmoothPoints,
  { repetitions, timesMs }: Measurement,
): Record<Side, number | null> {
  const standing = Uint8Array.from(timesMs, (timeMs) =>
    repetitions.some(({ events }) => timeMs > events.startMs && timeMs < events.endMs) ? 0 : 1,
  );
  const focalPx = focalLengthPx(track.widthPx, track.heightPx);
  const footOf = (side: Side) => {
    const leg = viewedLeg(points, side, track, focalPx);
    return leg === null ? null : footOfLegDeg(leg, side, standing, focalPx);
  };
  return { left: footOf('left'), right: footOf('right') };
}
