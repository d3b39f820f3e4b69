import { practiceRepeats, type PracticeRepeat } from '../rules/practiceRepeats';
import type { PatientIndex } from './createPatientIndex';

/** Sets of all patients of this device that were filmed again, as far as they were worked out. */
export async function readRepeats(
  index: Pick<PatientIndex, 'list' | 'knownSessionsOf'>,
): Promise<PracticeRepeat[]> {
  const { patients } = await index.list();
  const found: PracticeRepeat[] = [];
  for (const { id, repeats } of patients) {
    if (repeats.length === 0) continue;
    found.push(...practiceRepeats(repeats, (await index.knownSessionsOf(id)) ?? []));
  }
  return found;
}
