import type { Repository } from '#device/storage/repository';
import { practiceRepeats, type PracticeRepeat } from '../rules/practiceRepeats';
import type { PatientIndex } from './createPatientIndex';

/** Sets of all patients of this device that were filmed again, as far as they were worked out. */
export async function readRepeats(
  { patients }: Pick<Repository, 'patients'>,
  index: Pick<PatientIndex, 'knownSessionsOf'>,
): Promise<PracticeRepeat[]> {
  const found: PracticeRepeat[] = [];
  for (const { id, repeats } of (await patients.list()).found) {
    if (repeats.length === 0) continue;
    found.push(...practiceRepeats(repeats, (await index.knownSessionsOf(id)) ?? []));
  }
  return found;
}
