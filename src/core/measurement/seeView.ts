import type { Task } from '../exercises/exercises';
import { otherSide, type Side } from '../protocol/side';
import type { BendsView } from '../view/bendsView';
import type { ErrorSources } from '../view/errorBand';
import { squareToBody, type FrontalLeg } from '../view/frontalKneeAngle';
import { fuseCues, type YawEstimate } from '../view/fuseCues';
import { measureViewCues, type ViewedLeg } from '../view/measureViewCues';
import type { CameraRoll } from './cameraRoll';
import type { RestMoments } from './restMoments';

/**
 * Turned farther from the camera than this, the picture no longer shows what the angle needs, degrees: there
 * the error of the picture angle grows to tens of degrees, and the calibration has not been shown to hold
 * (docs/view.md).
 */
export const widestYawDeg = 25;

/** How the body is turned from the camera, estimated from the recording itself. */
export interface View extends RestMoments {
  working: ViewedLeg;
  /** Null where the other leg was never seen. */
  other: ViewedLeg | null;
  /** Whether both feet stay on the floor. */
  onBothFeet: boolean;
  /** The working leg seen square from the body's front. */
  frontal: FrontalLeg;
  yaw: YawEstimate;
  roll: CameraRoll;
  /** Focal length that is assumed, px. */
  focalPx: number;
  /** Whether the body is turned too far for anything to be measured. */
  isTurned: boolean;
  /** The sources of the working leg's error bands. */
  sources: ErrorSources;
}

/**
 * @param other  null where the other leg was never seen
 * @param roll  already removed from the legs
 * @param bends  what two-legged bends before the recording showed, where there were any
 */
export function seeView(
  working: ViewedLeg,
  other: ViewedLeg | null,
  { viewSigns, onBothFeet }: Pick<Task, 'viewSigns' | 'onBothFeet'>,
  workingSide: Side,
  focalPx: number,
  roll: CameraRoll,
  moments: RestMoments,
  bends?: BendsView,
): View {
  const legs = { [workingSide]: working, [otherSide(workingSide)]: other ?? working } as Record<
    Side,
    ViewedLeg
  >;
  // Without the other leg, only the reading of the working foot is left.
  const signs = other === null ? (['stance-foot'] as const) : viewSigns;
  const yaw = fuseCues(measureViewCues({ legs, workingSide, focalPx, ...moments, bends }, signs));
  return {
    ...moments,
    working,
    other,
    onBothFeet,
    frontal: squareToBody(working.lifted, yaw.yawDeg),
    yaw,
    roll,
    focalPx,
    isTurned: Math.abs(yaw.yawDeg) > widestYawDeg,
    sources: {
      yawDeg: yaw.yawDeg,
      yawSdDeg: yaw.sdDeg,
      rollSdDeg: roll.sdDeg,
      jitter: working.jitter,
    },
  };
}
