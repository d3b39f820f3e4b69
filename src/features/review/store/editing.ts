import { applyEdit, redoEdit, undoEdit } from '#core/history';
import type { Limits } from '#core/protocol/limits';
import { gradeAgain } from '#core/scoring/judge';
import { judgeAll } from '#shell/tracking/shownRecording';
import type { Review } from './review';
import { endLimitMove, limitsBeforeMove, moveLimits, undoLimits, type ReviewEdits } from './reviewEdits';
import type { ReviewParts } from './reviewParts';
import { signed } from './signed';

/** Corrections and limits: what they change is measured or judged again at once, and can be undone. */
export function editing({
  adapters,
  get,
  set,
  keeper,
  showing,
}: ReviewParts): Pick<
  Review,
  'correct' | 'moveLimits' | 'endLimitMove' | 'putLimits' | 'holdForLater' | 'beSure' | 'undo' | 'redo'
> {
  const setCorrections = (edits: ReviewEdits) => {
    set({ edits });
    showing.measureAgain();
    keeper.changed();
  };

  /** Judges again; changed verdicts are counted against the limits before. */
  const setLimits = (limits: Limits, edits: ReviewEdits, before: Limits) => {
    const { recording } = get();
    if (recording === null) return set({ limits, edits });
    const { sureness } = get();
    const judgements = judgeAll(recording.measurement, limits, sureness);
    const earlier = judgeAll(recording.measurement, before, sureness);
    const changed = judgements.filter(({ verdict }, index) => verdict !== earlier[index]?.verdict);
    set({ limits, edits, judgements, changedVerdicts: changed.length });
  };

  const move = (next: Limits) => {
    const moved = moveLimits(get().edits, get().limits, next);
    setLimits(moved.limits, moved.edits, limitsBeforeMove(moved.edits) ?? moved.limits);
  };

  /** Ends a move of a limit, and notes who set it and when. */
  const endMove = () => {
    const { recording, limits, edits, entries } = get();
    const ended = endLimitMove(edits);
    set({ edits: ended });
    if (recording === null || ended.done.length === edits.done.length) return;
    const entry = { limits, ...signed(get(), adapters) };
    set({ entries: { ...entries, limitsSet: [...entries.limitsSet, entry] } });
    keeper.changed();
  };

  return {
    correct(change) {
      const { recording, edits } = get();
      if (recording === null) return;
      const correction = { change, ...signed(get(), adapters) };
      setCorrections(applyEdit(edits, { kind: 'correction', correction }));
    },
    moveLimits: move,
    endLimitMove: endMove,
    putLimits(next) {
      move(next);
      endMove();
    },
    holdForLater(isForLater) {
      const { entries } = get();
      const last = entries.limitsSet.at(-1);
      if (last === undefined) return;
      const { forLater: _, ...once } = last;
      const entry = isForLater ? { ...once, forLater: true as const } : once;
      set({ entries: { ...entries, limitsSet: [...entries.limitsSet.slice(0, -1), entry] } });
      keeper.changed();
    },
    beSure(sureness) {
      set({
        sureness,
        judgements: get().judgements.map((one) => gradeAgain(one, sureness)),
        changedVerdicts: null,
      });
      adapters.sureness.write(sureness);
    },
    undo() {
      const { limits, edits, entries } = get();
      const last = edits.moving ?? edits.done.at(-1);
      if (last === undefined) return;
      if (last.kind === 'correction') return setCorrections(undoEdit(edits));
      setLimits(last.before, undoLimits(edits), limits);
      if (edits.moving === null) set({ entries: { ...entries, limitsSet: entries.limitsSet.slice(0, -1) } });
      keeper.changed();
    },
    redo() {
      const { edits } = get();
      if (edits.undone.length > 0) setCorrections(redoEdit(edits));
    },
  };
}
