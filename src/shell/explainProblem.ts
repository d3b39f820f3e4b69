import { ParcelProblem } from '#documents/parcel/parcelProblem';
import { RecordingFileProblem } from '#documents/reading/recordingFileProblem';
import { PlanProblem } from '#documents/plan/planProblem';
import { VideoProblem } from '#device/frames/videoProblem';
import { StorageProblem } from '#device/storage/storageProblem';

/** Something that stopped the work, as it is told to the person: what, why, what to do now. */
export interface Problem {
  title: string;
  sentence: string;
}

/**
 * Turns whatever was thrown into words.
 *
 * @param doing  what could not be done, as it follows 'could not': 'be opened', 'be tracked'
 */
export function explainProblem(error: unknown, doing: string): Problem {
  if (error instanceof VideoProblem) return { title: 'This video can’t be used', sentence: error.message };
  if (error instanceof RecordingFileProblem)
    return { title: 'This session document can’t be opened', sentence: error.message };
  if (error instanceof PlanProblem) return { title: 'This plan can’t be opened', sentence: error.message };
  if (error instanceof ParcelProblem) return { title: 'This file can’t be opened', sentence: error.message };
  if (error instanceof StorageProblem)
    return { title: 'This device could not keep or find it', sentence: error.message };
  const detail = error instanceof Error && error.message !== '' ? error.message : 'no reason was given';
  return {
    title: `This could not ${doing}`,
    sentence: `The reason reported is: ${detail.replace(/\.$/, '')}. Try again; if it happens again, reload the page.`,
  };
}
