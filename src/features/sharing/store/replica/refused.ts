import { Problem } from '#core/problem';
import type { ReplicaRows } from '#device/storage/replicaRows';
import { z } from '#documents/schema/zod';
import { namesakeSchema, refusalReasons, type Namesake, type Refusal, type RefusalReason } from './refusal';

/** Sealed copies that were not taken in, by their id on the server. */
export interface Refused {
  list(): { id: string; reason: RefusalReason; namesake: Namesake | null }[];
  /**
   * @param refusal  null where it was taken in
   * @throws TooManyRefused
   */
  note(id: string, refusal: Pick<Refusal, 'reason' | 'namesake'> | null): Promise<void>;
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
/** Earlier versions kept the reason alone. */
const keptSchema = z.union([
  z.enum(refusalReasons).transform((reason) => ({ reason, namesake: null })),
  z.strictObject({ reason: z.enum(refusalReasons), namesake: namesakeSchema.nullable() }),
]);

export async function readRefused(rows: ReplicaRows): Promise<Refused> {
  const known = new Map<string, z.infer<typeof keptSchema>>();
  for (const { key, value } of await rows.list(prefix)) {
    const result = keptSchema.safeParse(value);
    if (result.success) known.set(key.slice(prefix.length), result.data);
  }
  let inARow = 0;
  return {
    list: () => [...known].map(([id, kept]) => ({ id, ...kept })),
    async note(id, refusal) {
      if (refusal === null) {
        inARow = 0;
        if (known.delete(id)) await rows.remove(prefix + id);
        return;
      }
      const { reason, namesake } = refusal;
      const before = known.get(id);
      const kept = { reason, namesake };
      known.set(id, kept);
      if (JSON.stringify(before) !== JSON.stringify(kept)) await rows.put(prefix + id, kept);
      if (before?.reason === reason) return;
      if (reason !== 'waits' && ++inARow >= mostRefused) throw new TooManyRefused();
    },
    restart() {
      inARow = 0;
    },
  };
}
