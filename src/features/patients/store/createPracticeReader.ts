import type { Repository } from '#device/storage/repository';
import { practiceEyes, type PracticeEye } from '../rules/practiceEyes';
import { practiceRepeats, type PracticeRepeat } from '../rules/practiceRepeats';
import type { PatientIndex } from './createPatientIndex';

/** What the practice's own measuring and judging rest on: all patients of this device, as far as they were worked out. */
export async function readPractice(
  { patients }: Pick<Repository, 'patients'>,
  index: Pick<PatientIndex, 'knownSessionsOf'>,
): Promise<{ repeats: PracticeRepeat[]; eyes: PracticeEye[] }> {
  const found: { repeats: PracticeRepeat[]; eyes: PracticeEye[] } = { repeats: [], eyes: [] };
  for (const { id, repeats, ownEye } of (await patients.list()).found) {
    if (repeats.length + ownEye.length === 0) continue;
    const sessions = (await index.knownSessionsOf(id)) ?? [];
    found.repeats.push(...practiceRepeats(repeats, sessions));
    found.eyes.push(...practiceEyes(ownEye, sessions));
  }
  return found;
}
