import { useEffect, useRef } from 'react';

/** What gets the focus once the list is redrawn: the task at an index, either its move button or the whole card. */
interface NextFocus {
  index: number;
  move: 'up' | 'down' | null;
}

/**
 * Keeps the focus on a task that was moved. After one was removed, moves it to the task now in its place,
 * else to the last one, else to the button that adds one.
 *
 * @param items  the tasks as they are drawn
 */
export function useTaskFocus(items: readonly unknown[]) {
  const list = useRef<HTMLElement>(null);
  const next = useRef<NextFocus | null>(null);
  useEffect(() => {
    if (next.current === null || list.current === null) return;
    const { index, move } = next.current;
    next.current = null;
    const cards = list.current.querySelectorAll<HTMLElement>('.plan-card');
    const card = cards[Math.min(index, cards.length - 1)];
    if (card === undefined) {
      list.current.querySelector<HTMLElement>('.plan-add')?.focus();
      return;
    }
    const other = move === 'up' ? 'down' : 'up';
    const button =
      move === null
        ? null
        : (card.querySelector<HTMLElement>(`[data-move="${move}"]:enabled`) ??
          card.querySelector<HTMLElement>(`[data-move="${other}"]:enabled`));
    (button ?? card).focus();
  }, [items]);
  return { list, focusNext: (focus: NextFocus) => void (next.current = focus) };
}
