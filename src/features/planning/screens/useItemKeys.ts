import { useState } from 'react';
import type { PlanItem } from '#documents/plan/planDocument';

/** A key for each task that stays with it when it moves, is changed, or comes back by an undo. */
export function useItemKeys() {
  const [keys] = useState(() => {
    const ofItems = new WeakMap<PlanItem, number>();
    let last = 0;
    const key = (item: PlanItem): number => {
      const known = ofItems.get(item);
      if (known !== undefined) return known;
      ofItems.set(item, ++last);
      return last;
    };
    return { key, follow: (next: PlanItem, item: PlanItem) => void ofItems.set(next, key(item)) };
  });
  return keys;
}
