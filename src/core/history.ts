/** Edits that can be undone and redone. */
export interface History<Edit> {
  /** In force, the latest last. */
  readonly done: readonly Edit[];
  /** Undone, the latest last. */
  readonly undone: readonly Edit[];
  /** The edit that a move has reached, as while a slider is held; null between moves. */
  readonly moving: Edit | null;
}

export function startHistory<Edit>(done: readonly Edit[] = []): History<Edit> {
  return { done, undone: [], moving: null };
}

/** Adds an edit; what was undone before can no longer be redone. */
export function applyEdit<Edit>(history: History<Edit>, edit: Edit): History<Edit> {
  return { ...history, done: [...history.done, edit], undone: [] };
}

/** Moves on to an edit; the whole move counts as one once it has ended. */
export function moveEdit<Edit>(history: History<Edit>, edit: Edit): History<Edit> {
  return { ...history, moving: edit };
}

/** Ends a move; unchanged where there is none. */
export function endMove<Edit>(history: History<Edit>): History<Edit> {
  if (history.moving === null) return history;
  return applyEdit({ ...history, moving: null }, history.moving);
}

/** Undoes the last edit, or the move in progress, which can't be redone; unchanged where there is neither. */
export function undoEdit<Edit>(history: History<Edit>): History<Edit> {
  if (history.moving !== null) return { ...history, moving: null };
  if (history.done.length === 0) return history;
  return { ...history, done: history.done.slice(0, -1), undone: [...history.undone, history.done.at(-1)!] };
}

/** Redoes the edit that was undone last; unchanged where none was. */
export function redoEdit<Edit>(history: History<Edit>): History<Edit> {
  if (history.undone.length === 0) return history;
  return { ...history, done: [...history.done, history.undone.at(-1)!], undone: history.undone.slice(0, -1) };
}
