import { useEffect } from 'react';
import type { Review } from '../store/review';
import type { Playhead } from './playhead';
import { nextRate } from './playRates';

/** What moves the picture along the selected repetition. */
export interface RepetitionActions {
  toggleLoop: () => void;
  goToWorst: () => void;
}

/** Where keys have their own meaning. */
const ownKeys =
  'input, select, textarea, [role="radio"], [role="listbox"], [role="option"], [role="dialog"], [role="menu"], [role="tab"], [data-own-keys]';

/** Keys of the review: Space plays, left and right step a frame, up and down change the repetition, Ctrl+Z undoes, Ctrl+Shift+Z or
 * Ctrl+Y redoes. */
export function useReviewKeys(
  review: Review,
  playhead: Playhead,
  order: readonly number[],
  onSelect: (index: number) => void,
  actions: RepetitionActions | null,
): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const target = event.target instanceof Element ? event.target : document.body;
      const withControl = event.ctrlKey || event.metaKey;
      const key = event.key.toLowerCase();
      if (target.closest('input[type="text"], textarea') !== null && !isNumber(target)) return;
      if (withControl && key === 'z' && !event.shiftKey) {
        review.undo();
      } else if (withControl && (key === 'y' || key === 'z')) {
        review.redo();
      } else if (event.ctrlKey || event.metaKey || event.altKey || target.closest(ownKeys) !== null) {
        return;
      } else if (event.key === ' ' && target.closest('button, a') === null) {
        playhead.togglePlaying();
      } else if (event.key === 'ArrowLeft' || event.key === 'ArrowRight') {
        playhead.step(event.key === 'ArrowRight' ? 1 : -1);
      } else if (event.key === 'ArrowUp' || event.key === 'ArrowDown') {
        if (target.closest('[role="grid"]') !== null) return; // The table moves its own selection.
        const { selected } = review.store.getState();
        const place = selected === null ? -1 : order.indexOf(selected);
        const next = order[place + (event.key === 'ArrowDown' ? 1 : -1)];
        if (next === undefined) return;
        onSelect(next);
      } else if (key === 's') {
        playhead.setRate(nextRate(playhead.state().rate));
      } else if (actions !== null && key === 'l') {
        actions.toggleLoop();
      } else if (actions !== null && key === 'w') {
        actions.goToWorst();
      } else {
        return;
      }
      event.preventDefault();
      event.stopPropagation();
    };
    // Handled before the table, which would use left and right to move between cells.
    window.addEventListener('keydown', onKey, { capture: true });
    return () => window.removeEventListener('keydown', onKey, { capture: true });
  }, [review, playhead, order, onSelect, actions]);
}

/** A limit's number field: Ctrl+Z there means the limit, not its digits. */
function isNumber(target: Element): boolean {
  return target.classList.contains('number-input');
}
