import { countRises, filmedRises, type RiseCount, type RiseTest } from '#core/assessments/countRises';
import { measureCorrected } from '#core/correction/measureCorrected';
import type { Repository } from '#device/storage/repository';
import { recordingTrack } from '#documents/recording/recordingTrack';

/** Measures a recording and counts its rises for a test; null where it is no longer kept here. */
export async function readRiseCount(
  { recordings }: Pick<Repository, 'recordings'>,
  recordingId: string,
  test: RiseTest,
): Promise<RiseCount | null> {
  const found = await recordings.find(recordingId);
  if (found === null) return null;
  const { setup, corrections = [] } = found.recording;
  const { measurement, track, excluded } = measureCorrected(
    recordingTrack(found.recording),
    setup,
    corrections,
  );
  return countRises(test, filmedRises(track, measurement, excluded, setup.goMs));
}
