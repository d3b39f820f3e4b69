import { Problem } from '#core/problem';
import type { ReplicaRows } from '#device/storage/replicaRows';
import { refusalReasons, type RefusalReason } from './refusal';

/** Sealed copies that were not taken in, by their id on the server. */
export interface Refused {
  list(): { id: string; reason: RefusalReason }[];
  /**
   * @param reason  null where it was taken in
   * @throws TooManyRefused
   */
  note(id: string, reason: RefusalReason | null): Promise<void>;
  /** Counts from the start again, after somebody chose to continue. */
  restart(): void;
}

/** So many one after another that the server is not taken for the practice's. */
export const mostRefused = 500;

/** Sharing ends here, and continues only where somebody asks for it. */
export class TooManyRefused extends Problem {
  constructor() {
    super(
      'file',
      `${mostRefused} documents one after another were not for this device, so sharing was stopped; nothing here was changed. Check the address with whoever runs the server. If you are new in the practice, ask a colleague to add your key first.`,
    );
    this.name = 'TooManyRefused';
  }
}

const prefix = 'refused:';

export async function readRefused(rows: ReplicaRows): Promise<Refused> {
  const known = new Map<string, RefusalReason>();
  for (const { key, value } of await rows.list(prefix)) {
    const reason = refusalReasons.find((one) => one === value);
    if (reason !== undefined) known.set(key.slice(prefix.length), reason);
  }
  let inARow = 0;
  return {
    list: () => [...known].map(([id, reason]) => ({ id, reason })),
    async note(id, reason) {
      if (reason === null) {
        inARow = 0;
        if (known.delete(id)) await rows.remove(prefix + id);
        return;
      }
      if (known.get(id) === reason) return;
      known.set(id, reason);
      await rows.put(prefix + id, reason);
      if (reason !== 'waits' && ++inARow >= mostRefused) throw new TooManyRefused();
    },
    restart() {
      inARow = 0;
    },
  };
}
