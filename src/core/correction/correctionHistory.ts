import type { Correction } from './correction';

/** Corrections in force, in the order in which they were made, and those that were taken back, last one last. */
export interface CorrectionHistory {
  done: readonly Correction[];
  undone: readonly Correction[];
}

export function startCorrections(done: readonly Correction[] = []): CorrectionHistory {
  return { done, undone: [] };
}

/** Adds a correction; what was taken back before can't be brought back any more. */
export function addCorrection({ done }: CorrectionHistory, correction: Correction): CorrectionHistory {
  return { done: [...done, correction], undone: [] };
}

/** Takes the last correction back; a list without any stays as it is. */
export function undoCorrection(history: CorrectionHistory): CorrectionHistory {
  const last = history.done.at(-1);
  if (last === undefined) return history;
  return { done: history.done.slice(0, -1), undone: [...history.undone, last] };
}

/** Brings back what was taken back last; stays as it is where nothing was. */
export function redoCorrection(history: CorrectionHistory): CorrectionHistory {
  const last = history.undone.at(-1);
  if (last === undefined) return history;
  return { done: [...history.done, last], undone: history.undone.slice(0, -1) };
}
