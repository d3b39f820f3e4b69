import { otherSide, type Side } from '../protocol/side';
import type { Task } from '../protocol/tasks';
import { fuseCues, type YawEstimate } from '../view/fuseCues';
import { readViewCues, type ViewedLeg } from '../view/readViewCues';

/** Within this share of the movement from either end the body counts as resting there or as fully at the far end. */
const endShare = 0.12;

export interface SeenLegs {
  working: ViewedLeg;
  /** Null where the other leg was never seen. */
  other: ViewedLeg | null;
}

/** How the body stands to the camera, told from the recording itself. */
export interface View extends SeenLegs {
  focalPx: number;
  yaw: YawEstimate;
  /** 1 a sample where the person stands upright, and where the knees are bent most. */
  upright: Uint8Array;
  bent: Uint8Array;
}

/** @param excursion  hip height, 0 at rest and 1 at the far end; null where the hips never move */
export function seeView(
  { working, other }: SeenLegs,
  { shape, viewSigns }: Task,
  workingSide: Side,
  focalPx: number,
  excursion: Float64Array | null,
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
  const yaw = fuseCues(readViewCues({ legs, workingSide, focalPx, upright, bent }, signs));
  return { working, other, focalPx, yaw, upright, bent };
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
