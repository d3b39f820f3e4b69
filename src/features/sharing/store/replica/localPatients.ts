import type { Repository } from '#device/storage/repository';
import type { PatientDocument } from '#documents/patient/patientDocument';

/** What of the patients kept here decides whose a document is. */
export interface LocalPatient {
  id: string;
  pseudonym: string;
  isDemo: boolean;
}

/** The patients kept here, read once and then as they change. */
export interface LocalPatients {
  byId(id: string): Promise<LocalPatient | null>;
  byPseudonym(pseudonym: string): Promise<LocalPatient | null>;
  /** To be called when one changed. */
  refresh(id: string): Promise<void>;
}

export function createLocalPatients({ patients }: Pick<Repository, 'patients'>): LocalPatients {
  let read: Promise<Map<string, LocalPatient>> | null = null;
  const index = () =>
    (read ??= patients.list().then(({ found }) => new Map(found.map((one) => [one.id, indexed(one)]))));
  return {
    byId: async (id) => (await index()).get(id) ?? null,
    async byPseudonym(pseudonym) {
      for (const one of (await index()).values()) if (one.pseudonym === pseudonym) return one;
      return null;
    },
    async refresh(id) {
      const known = await index();
      const kept = await patients.find(id).catch(() => null);
      if (kept === null) known.delete(id);
      else known.set(id, indexed(kept));
    },
  };
}

function indexed({ id, pseudonym, note }: PatientDocument): LocalPatient {
  return { id, pseudonym, isDemo: note !== '' };
}
