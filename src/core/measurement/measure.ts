import type { KeypointTrack } from '../keypoints/keypointTrack';
import { easyBends } from './easyBends';
import { measureKnown, type Arrange } from './measureKnown';
import type { Measurement, Setup } from './measurement';
import { smoothPoints } from './smoothPoints';

/**
 * Measures a recording: from the joints seen in each frame to repetitions with their angles. Easy two-legged
 * bends at its beginning show the view where the task itself does not, and are no repetitions.
 *
 * Frame:   the body's frontal plane; how far the body is turned from the camera is estimated from the
 *          recording
 * @param track  observed joints, never changed
 * @param setup  task and working side, the person's own
 * @param arrange  may replace the repetitions found
 * @returns  curves on a uniform time base, repetitions, and notes on what to know before trusting them
 */
export function measure(track: KeypointTrack, setup: Setup, arrange?: Arrange): Measurement {
  const points = smoothPoints(track);
  const bends = easyBends(track, setup, points);
  if (bends === null) return measureKnown(track, setup, 0, arrange, points);
  return { ...measureKnown(track, { ...setup, bends: bends.view }, bends.endMs, arrange, points), setup };
}
