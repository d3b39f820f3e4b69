import type { PatientDocument } from '#documents/patient/patientDocument';
import type { SharedKind } from '#documents/practice/sharedHead';
import type { SessionDocument } from '#documents/session/sessionDocument';
import type { PlanRecord } from './keptSchemas';
import type { Edition } from './records';

/** Documents by kind that are changed as they are by then. */
export interface Changeable {
  patient: PatientDocument;
  plan: PlanRecord;
  session: SessionDocument;
}

/**
 * What sharing within the practice keeps for itself: its settings, and which version of what is on the server. It is
 * deleted with everything else, sealed by the lock, and in no backup.
 */
export interface ReplicaRows {
  /** Untrusted; undefined where there is none, or it can't be read. */
  get(key: string): Promise<unknown>;
  /** Of all whose keys start so; those that can't be read are left out. */
  list(prefix: string): Promise<{ key: string; value: unknown }[]>;
  put(key: string, value: unknown): Promise<void>;
  remove(key: string): Promise<void>;
  /** Which editions of a kind are kept, those that can't be read included. */
  editions(kind: Exclude<SharedKind, 'piece'>): Promise<{ id: string; edition: Edition }[]>;
  /** Null where there is none. */
  find<Kind extends keyof Changeable>(kind: Kind, id: string): Promise<Changeable[Kind] | null>;
  /**
   * Changes what is kept, or adds it, as it is by then.
   *
   * @param change  given null where there is none; what it returns is kept, and where it is the same, nothing is written
   */
  change<Kind extends keyof Changeable>(
    kind: Kind,
    id: string,
    change: (kept: Changeable[Kind] | null) => Changeable[Kind] | null,
  ): Promise<void>;
}
