import { countInwardBends, type BendCount } from '#core/assessments/countInwardBends';
import {
  countRises,
  filmedRises,
  riseTests,
  type RiseCount,
  type RiseTest,
} from '#core/assessments/countRises';
import { measureCorrected } from '#core/correction/measureCorrected';
import type { Repository } from '#device/storage/repository';
import { recordingTrack } from '#documents/recording/recordingTrack';

/** Tests whose result a recording of one set can give. */
export const cameraTests = [...riseTests, 'mini-squat'] as const;
export type CameraTest = (typeof cameraTests)[number];

/** What a recording says of a test. */
export type CameraCount = { test: RiseTest; count: RiseCount } | { test: 'mini-squat'; count: BendCount };

/** Measures a recording and counts in it for a test; null where it is no longer kept here. */
export async function readCameraCount(
  { recordings }: Pick<Repository, 'recordings'>,
  recordingId: string,
  test: CameraTest,
): Promise<CameraCount | null> {
  const found = await recordings.find(recordingId);
  if (found === null) return null;
  const { setup, corrections = [] } = found.recording;
  const { measurement, track, excluded } = measureCorrected(
    recordingTrack(found.recording),
    setup,
    corrections,
  );
  if (test === 'mini-squat') return { test, count: countInwardBends(measurement, excluded) };
  return { test, count: countRises(test, filmedRises(track, measurement, excluded, setup.goMs)) };
}
