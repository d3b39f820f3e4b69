import type { PoseModel } from '#core/keypoints/poseModel';
import { message } from '#words/messages/message';

/** Below this rate the movement of a limb, up to 6 Hz, falls between the pictures of the full model, Hz. */
export const leastFullFps = 12;
/**
 * Below this rate nothing is counted or announced live: a fast repetition would have only a handful of
 * pictures, Hz.
 */
export const leastLiveFps = 8;

/** How a set is tracked on this device. */
export interface LiveDecision {
  model: PoseModel;
  /** Whether repetitions are counted and judged while they happen. */
  hasFeedback: boolean;
  /** What the person should know; null where all is well. */
  sentence: string | null;
}

/**
 * Decides how a set is tracked from how fast this device tracks.
 *
 * @param fullFps  pictures a second with the full model
 * @param liteFps  with the lite model; null where it was not measured
 * @returns  null where the lite model must be measured first
 */
export function decideLive(fullFps: number, liteFps: number | null): LiveDecision | null {
  if (fullFps >= leastFullFps) return { model: 'full', hasFeedback: true, sentence: null };
  if (liteFps === null) return null;
  if (liteFps >= leastLiveFps) return { model: 'lite', hasFeedback: true, sentence: null };
  return {
    model: 'lite',
    hasFeedback: false,
    sentence: message('trouble.slow'),
  };
}
