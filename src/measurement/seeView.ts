import { otherSide, type Side } from '../protocol/side';
import type { Task } from '../protocol/tasks';
import type { BendsView } from '../view/bendsView';
import type { ErrorSources } from '../view/errorBand';
import { squareToBody, type FrontalLeg } from '../view/frontalKneeAngle';
import { fuseCues, type YawEstimate } from '../view/fuseCues';
import { readViewCues, type ViewedLeg } from '../view/readViewCues';

/** Within this share of the movement from either end the body counts as resting there or as fully at the far end. */
const endShare = 0.12;

/**
 * Turned farther from the camera than this, the picture no longer shows what the angle needs, degrees: the error of
 * the picture angle grows to tens of degrees there and the calibration was never shown to hold (docs/view.md).
 */
export const widestYawDeg = 25;

/** How the body stands to the camera, told from the recording itself. */
export interface View {
  working: ViewedLeg;
  /** The working leg seen square from the body's front. */
  frontal: FrontalLeg;
  yaw: YawEstimate;
  /** Whether the body is turned too far for anything to be measured. */
  isTurned: boolean;
  /** What the error bands of the working leg come from. */
  sources: ErrorSources;
  /** 1 a sample where the person stands upright, and where the knees are bent most. */
  upright: Uint8Array;
  bent: Uint8Array;
}

/**
 * @param other  null where the other leg was never seen
 * @param excursion  hip height, 0 at rest and 1 at the far end; null where the hips never move
 * @param bends  what two-legged bends before the recording showed, where there were any
 */
export function seeView(
  working: ViewedLeg,
  other: ViewedLeg | null,
  { shape, viewSigns }: Task,
  workingSide: Side,
  focalPx: number,
  excursion: Float64Array | null,
  bends?: BendsView,
): View {
  const samples = working.picture.seen.length;
  const rest = mark(samples, excursion, (value) => value < endShare);
  const far = mark(samples, excursion, (value) => value > 1 - endShare);
  const [bent, upright] = shape === 'rise' ? [rest, far] : [far, rest];
  const legs = { [workingSide]: working, [otherSide(workingSide)]: other ?? working } as Record<
    Side,
    ViewedLeg
  >;
  // Without the other leg only what the working foot says is left.
  const signs = other === null ? (['stance-foot'] as const) : viewSigns;
  const yaw = fuseCues(readViewCues({ legs, workingSide, focalPx, upright, bent, bends }, signs));
  return {
    working,
    frontal: squareToBody(working.lifted, yaw.yawDeg),
    yaw,
    isTurned: Math.abs(yaw.yawDeg) > widestYawDeg,
    sources: { yawDeg: yaw.yawDeg, yawSdDeg: yaw.sdDeg, jitter: working.jitter },
    upright,
    bent,
  };
}

function mark(
  samples: number,
  excursion: Float64Array | null,
  counts: (value: number) => boolean,
): Uint8Array {
  const marked = new Uint8Array(samples);
  excursion?.forEach((value, i) => {
    if (counts(value)) marked[i] = 1;
  });
  return marked;
}
