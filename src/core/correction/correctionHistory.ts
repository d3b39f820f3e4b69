import type { Correction } from './correction';

/** Corrections in force, in the order in which they were made, and those that were undone, the latest last. */
export interface CorrectionHistory {
  done: readonly Correction[];
  undone: readonly Correction[];
}

export function startCorrections(done: readonly Correction[] = []): CorrectionHistory {
  return { done, undone: [] };
}

/** Adds a correction; what was undone before can no longer be redone. */
export function addCorrection({ done }: CorrectionHistory, correction: Correction): CorrectionHistory {
  return { done: [...done, correction], undone: [] };
}

/** Undoes the last correction; an empty list is returned unchanged. */
export function undoCorrection(history: CorrectionHistory): CorrectionHistory {
  const last = history.done.at(-1);
  if (last === undefined) return history;
  return { done: history.done.slice(0, -1), undone: [...history.undone, last] };
}

/** Redoes what was undone last; unchanged where nothing was. */
export function redoCorrection(history: CorrectionHistory): CorrectionHistory {
  const last = history.undone.at(-1);
  if (last === undefined) return history;
  return { done: [...history.done, last], undone: history.undone.slice(0, -1) };
}
