import { limitsInRange, type Limits } from '#core/protocol/limits';
import { sameLimits } from '#core/protocol/sameLimits';

/** Limits in force, with what they were before. */
export interface LimitHistory {
  present: Limits;
  past: readonly Limits[];
  /** What the limits were when the move under way began; null between moves. */
  movingFrom: Limits | null;
}

/** A history that begins with these limits. */
export function startLimits(present: Limits): LimitHistory {
  return { present, past: [], movingFrom: null };
}

/** Moves limits while a slider is held; the whole move counts as one change once it is ended. */
export function moveLimits(history: LimitHistory, next: Limits): LimitHistory {
  const present = limitsInRange(next);
  return { ...history, present, movingFrom: history.movingFrom ?? history.present };
}

/** Ends a move: what stood before it can be brought back. */
export function endMove(history: LimitHistory): LimitHistory {
  const { present, past, movingFrom } = history;
  if (movingFrom === null || sameLimits(movingFrom, present)) return { present, past, movingFrom: null };
  return { present, past: [...past, movingFrom], movingFrom: null };
}

/** Takes the last change back; a history without changes stays as it is. */
export function undoLimits(history: LimitHistory): LimitHistory {
  const ended = endMove(history);
  const before = ended.past.at(-1);
  if (before === undefined) return ended;
  return { present: before, past: ended.past.slice(0, -1), movingFrom: null };
}
