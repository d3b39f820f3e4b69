import type { Correction } from '#core/correction/correction';
import { endMove, moveEdit, startHistory, undoEdit, type History } from '#core/history';
import { limitsInRange, type Limits } from '#core/protocol/limits';
import { sameLimits } from '#core/protocol/sameLimits';

/** What can be undone in a review: a correction, or a change of the limits. */
export type ReviewEdit =
  { kind: 'correction'; correction: Correction } | { kind: 'limits'; before: Limits; after: Limits };

/** All edits in the order in which they were made. Only corrections are redone. */
export type ReviewEdits = History<ReviewEdit>;

/** @param corrections  made earlier; they can be undone too */
export function startEdits(corrections: readonly Correction[] = []): ReviewEdits {
  return startHistory(corrections.map((correction) => ({ kind: 'correction', correction })));
}

/** The corrections in force, in the order in which they were made. */
export function correctionsOf({ done }: ReviewEdits): Correction[] {
  return done.flatMap((edit) => (edit.kind === 'correction' ? [edit.correction] : []));
}

/** The limits when the current move began; null between moves. */
export function limitsBeforeMove({ moving }: ReviewEdits): Limits | null {
  return moving?.kind === 'limits' ? moving.before : null;
}

/**
 * Moves limits while a slider is held; the whole move counts as one change once it has ended.
 *
 * @param limits  those in force
 * @returns  the limits then in force as well, each within its range
 */
export function moveLimits(
  edits: ReviewEdits,
  limits: Limits,
  next: Limits,
): { edits: ReviewEdits; limits: Limits } {
  const before = limitsBeforeMove(edits) ?? limits;
  const after = limitsInRange(next);
  return { edits: moveEdit(edits, { kind: 'limits', before, after }), limits: after };
}

/** Ends a move of the limits; one that ended where it began was no change. */
export function endLimitMove(edits: ReviewEdits): ReviewEdits {
  const { moving } = edits;
  if (moving?.kind !== 'limits') return edits;
  if (sameLimits(moving.before, moving.after)) return undoEdit(edits);
  return { ...endMove(edits), undone: edits.undone };
}

/** Undoes the last edit, which must be one of the limits. */
export function undoLimits(edits: ReviewEdits): ReviewEdits {
  return { ...undoEdit(edits), undone: edits.undone };
}
