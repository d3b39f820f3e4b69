import type { Repository } from '../../storage/repository';
import { explainProblem, type Problem } from '../explainProblem';
import type { Removal } from './inboxState';

/** How long a removal can be taken back, ms. */
export const undoMs = 10_000;

/** Removals that outlast the tab: what was deleted must go, even where the tab is closed before it did. */
export interface RemovalNotes {
  read: () => Removal[];
  write: (removals: readonly Removal[]) => void;
}

interface RemovalParts {
  repository: () => Promise<Repository>;
  notes: RemovalNotes;
  nowMs: () => number;
  /** Calls once, later; returns the way to call it off. */
  later: (ms: number, call: () => void) => () => void;
  onChange: (removals: readonly Removal[]) => void;
  /** Hears when one is gone for good. */
  onGone: (id: string) => void;
  onProblem: (problem: Problem) => void;
}

/** Deletes for good, after a time in which it can be taken back. */
export function createRemovals({
  repository,
  notes,
  nowMs,
  later,
  onChange,
  onGone,
  onProblem,
}: RemovalParts) {
  let pending: readonly (Removal & { callOff: () => void })[] = [];

  const change = (next: typeof pending) => {
    const gone = pending.filter((one) => !next.includes(one)).map(({ id }) => id);
    pending = next;
    const removals = next.map(({ id, kind, dueMs }) => ({ id, kind, dueMs }));
    // Another tab may have noted some of its own.
    const others = notes
      .read()
      .filter(({ id }) => !gone.includes(id) && removals.every((one) => one.id !== id));
    notes.write([...others, ...removals]);
    onChange(removals);
  };
  const drop = (id: string) => {
    pending.find((one) => one.id === id)?.callOff();
    change(pending.filter((one) => one.id !== id));
  };
  const removeNow = async ({ id, kind }: Pick<Removal, 'id' | 'kind'>) => {
    const { visits, sessions } = await repository();
    await (kind === 'visit' ? visits : sessions).remove(id);
  };
  const finish = async (removal: Removal) => {
    try {
      await removeNow(removal);
      onGone(removal.id);
    } catch (error) {
      onProblem(explainProblem(error, 'be deleted'));
    } finally {
      drop(removal.id);
    }
  };

  return {
    add({ id, kind }: Pick<Removal, 'id' | 'kind'>) {
      if (pending.some((one) => one.id === id)) return;
      const removal: Removal = { id, kind, dueMs: nowMs() + undoMs };
      const callOff = later(undoMs, () => void finish(removal));
      change([...pending, { ...removal, callOff }]);
    },
    undo: drop,
    /** Deletes what an earlier opening of the page did not come to; a failure is tried again the next time. */
    async settle() {
      const due = notes
        .read()
        .filter(({ id, dueMs }) => dueMs <= nowMs() && pending.every((one) => one.id !== id));
      for (const removal of due) await removeNow(removal);
      notes.write(notes.read().filter(({ id }) => due.every((one) => one.id !== id)));
    },
  };
}
