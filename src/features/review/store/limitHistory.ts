import { limitsInRange, type Limits } from '#core/protocol/limits';
import { sameLimits } from '#core/protocol/sameLimits';

/** Limits in force, with earlier ones. */
export interface LimitHistory {
  present: Limits;
  past: readonly Limits[];
  /** The limits when the current move began; null between moves. */
  movingFrom: Limits | null;
}

/** A history that starts with these limits. */
export function startLimits(present: Limits): LimitHistory {
  return { present, past: [], movingFrom: null };
}

/** Moves limits while a slider is held; the whole move counts as one change once it has ended. */
export function moveLimits(history: LimitHistory, next: Limits): LimitHistory {
  const present = limitsInRange(next);
  return { ...history, present, movingFrom: history.movingFrom ?? history.present };
}

/** Ends a move: the limits before it can be restored. */
export function endMove(history: LimitHistory): LimitHistory {
  const { present, past, movingFrom } = history;
  if (movingFrom === null || sameLimits(movingFrom, present)) return { present, past, movingFrom: null };
  return { present, past: [...past, movingFrom], movingFrom: null };
}

/** Undoes the last change; a history without changes stays as it is. */
export function undoLimits(history: LimitHistory): LimitHistory {
  const ended = endMove(history);
  const before = ended.past.at(-1);
  if (before === undefined) return ended;
  return { present: before, past: ended.past.slice(0, -1), movingFrom: null };
}
