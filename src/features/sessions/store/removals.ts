import type { Repository } from '#device/storage/repository';
import { explainProblem, type ShownProblem } from '#shell/explainProblem';
import { logSeenName, sentName, tombstoneName } from '#shell/receivedNotes';
import type { Removable, Removal } from './keptSessionsState';

/** How long a removal can be undone, ms. */
export const undoMs = 10_000;

/** A record to be deleted, even if the tab is closed first; it contains no pseudonym. */
export interface RemovalNote extends Removable {
  dueMs: number;
}

/** Removals that outlast the tab. */
export interface RemovalNotes {
  read: () => RemovalNote[];
  write: (removals: readonly RemovalNote[]) => void;
}

interface RemovalParts {
  repository: () => Promise<Repository>;
  notes: RemovalNotes;
  nowMs: () => number;
  /** Calls once, later; returns a function that cancels it. */
  later: (ms: number, call: () => void) => () => void;
  onChange: (removals: readonly Removal[]) => void;
  /** Called when one is deleted for good. */
  onGone: (removal: Removal) => void;
  onProblem: (problem: ShownProblem) => void;
}

/** Deletes for good, after a time in which it can be undone. */
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
    const gone = pending.filter((one) => !next.includes(one)).flatMap(idsOf);
    pending = next;
    const removals = next.flatMap(({ records, dueMs }) => records.map((record) => ({ ...record, dueMs })));
    // Another tab may have noted removals too.
    const others = notes
      .read()
      .filter(({ id }) => !gone.includes(id) && removals.every((one) => one.id !== id));
    notes.write([...others, ...removals]);
    onChange(next.map(({ callOff, ...removal }) => removal));
  };
  const drop = (id: string) => {
    pending.find((one) => one.id === id)?.callOff();
    change(pending.filter((one) => one.id !== id));
  };
  const removeNow = async ({ id, kind }: Removable) => {
    const kept = await repository();
    if (kind === 'visit') {
      await kept.notes.write(tombstoneName(id), new Date(nowMs()).toISOString().slice(0, 10));
      await kept.notes.remove(sentName(id));
      await kept.sessions.remove(id);
    } else if (kind === 'recording') await kept.recordings.remove(id);
    else if (kind === 'patient') {
      await kept.patients.remove(id);
      await kept.notes.remove(logSeenName(id));
    } else if (kind === 'plan') await kept.plans.remove(id);
    else if (kind === 'interrupted') await kept.dropInterrupted(id);
    else await kept.notes.remove(id);
  };
  const finish = async (removal: Removal) => {
    const { records, patients } = removal;
    try {
      for (const record of records) await removeNow(record);
      for (const patient of patients) (await repository()).reportDeleted(patient);
      onGone(removal);
    } catch (error) {
      onProblem(explainProblem(error, 'delete'));
    } finally {
      drop(removal.id);
    }
  };

  return {
    add(asked: Omit<Removal, 'dueMs'>) {
      if (pending.some((one) => one.id === asked.id)) return;
      const removal: Removal = { ...asked, dueMs: nowMs() + undoMs };
      const callOff = later(undoMs, () => void finish(removal));
      change([...pending, { ...removal, callOff }]);
    },
    undo: drop,
    /** Deletes what was still due when the page was last closed; a failure is tried again next time. */
    async settle() {
      const due = notes
        .read()
        .filter(({ id, dueMs }) => isDue(dueMs, nowMs()) && !pending.flatMap(idsOf).includes(id));
      for (const record of due) await removeNow(record);
      notes.write(notes.read().filter(({ id }) => due.every((one) => one.id !== id)));
    },
  };
}

/** Nothing is noted further ahead than it can be undone: then the clock was set back, and it is overdue. */
function isDue(dueMs: number, nowMs: number): boolean {
  return dueMs <= nowMs || dueMs > nowMs + undoMs;
}

function idsOf({ records }: Removal): string[] {
  return records.map(({ id }) => id);
}
