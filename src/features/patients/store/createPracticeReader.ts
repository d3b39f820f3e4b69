import type { Repository } from '#device/storage/repository';
import type { KeptChange } from '#device/storage/watchChanges';
import type { PatientDocument } from '#documents/patient/patientDocument';
import { eyesTwice, practiceEyes, type EyeTwice, type PracticeEye } from '../rules/practiceEyes';
import { practiceRepeats, type PracticeRepeat } from '../rules/practiceRepeats';
import type { PatientIndex } from './createPatientIndex';

/** What the practice's own measuring and judging rest on: all patients of this device, as far as they were worked out. */
export interface Practice {
  repeats: PracticeRepeat[];
  eyes: PracticeEye[];
  twice: EyeTwice[];
}

/** Reads of all patients those few that the practice's own figures rest on. */
export interface PracticeReader {
  /** To be called with all patients, as they were just read. */
  know(patients: readonly PatientDocument[]): void;
  /** To be called with every change of what is kept. */
  follow(change: KeptChange): void;
  read(kept: Pick<Repository, 'patients'>): Promise<Practice>;
}

export function createPracticeReader(index: Pick<PatientIndex, 'knownSessionsOf'>): PracticeReader {
  /** Ids of those who count, as far as they were looked at; null until they were. */
  let counting: string[] | null = null;
  /** Who changed since this page was opened, and may count by now. */
  const changed = new Set<string>();
  const know = (patients: readonly PatientDocument[]) => {
    counting = patients.filter(counts).map(({ id }) => id);
  };
  const patientsOf = async ({ patients }: Pick<Repository, 'patients'>): Promise<PatientDocument[]> => {
    if (counting === null) {
      const { found } = await patients.list();
      know(found);
      return found.filter(counts);
    }
    const ids = [...new Set([...counting, ...changed])];
    // One that can't be read is named where all are listed.
    const found = await Promise.all(ids.map((id) => patients.find(id).catch(() => null)));
    return found.filter((patient) => patient !== null).filter(counts);
  };
  return {
    know,
    follow(change) {
      if (change.kind !== 'patients') return;
      if (change.id === null) counting = null;
      else changed.add(change.id);
    },
    async read(kept) {
      const practice: Practice = { repeats: [], eyes: [], twice: [] };
      for (const { id, repeats, ownEye } of await patientsOf(kept)) {
        const sessions = (await index.knownSessionsOf(id)) ?? [];
        practice.repeats.push(...practiceRepeats(repeats, sessions));
        practice.eyes.push(...practiceEyes(ownEye, sessions));
        practice.twice.push(...eyesTwice(ownEye));
      }
      return practice;
    },
  };
}

function counts({ repeats, ownEye }: PatientDocument): boolean {
  return repeats.length + ownEye.length > 0;
}
