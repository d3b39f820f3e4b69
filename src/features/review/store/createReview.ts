import { createStore } from 'zustand/vanilla';
import { annotating } from './annotating';
import { editing } from './editing';
import { exporting } from './exporting';
import { keepingFor } from './keepingFor';
import { opening } from './opening';
import type { Review } from './review';
import type { ReviewAdapters } from './reviewAdapters';
import { createReviewKeeper } from './reviewKeeper';
import type { ReviewParts } from './reviewParts';
import { initialReviewState, type ReviewState } from './reviewState';
import { settingUp } from './settingUp';
import { showing } from './showing';

/** The review without its screens. */
export function createReview(adapters: ReviewAdapters): Review {
  const store = createStore<ReviewState>(() => ({
    ...initialReviewState,
    reviewer: adapters.reviewer.read(),
    sureness: adapters.sureness.read(),
  }));
  const { getState: get, setState: set } = store;
  const parts: ReviewParts = {
    adapters,
    get,
    set,
    keeper: createReviewKeeper(get, set, adapters.later),
    showing: showing({ adapters, get, set }),
    closerLook: { current: Promise.resolve() },
  };
  const edit = editing(parts);

  // A problem on one screen does not concern the next.
  adapters.navigation.store.subscribe(({ screen }, before) => {
    if (screen === before.screen) return;
    set({ problem: null });
    // Who works here may have been said elsewhere meanwhile.
    if (get().reviewer === '') set({ reviewer: adapters.reviewer.read() });
  });

  return {
    store,
    ...settingUp(parts, edit.correct),
    ...opening(parts),
    ...edit,
    ...annotating(parts),
    ...exporting(parts),
    ...keepingFor(parts),
    select: (selected) => set({ selected }),
    showMeasure: (measure) => set({ measure }),
    dismissProblem: () => set({ problem: null }),
  };
}
