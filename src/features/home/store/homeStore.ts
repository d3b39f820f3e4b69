import { createStore, type StoreApi } from 'zustand/vanilla';
import {
  commonOf,
  freshParts,
  initialCommon,
  isAtStep,
  type HomeCommon,
  type HomeState,
  type HomeStep,
  type StepParts,
} from './homeState';

/** The state of a home session with the ways to change it. */
export interface HomeStore {
  readonly store: StoreApi<HomeState>;
  get(): HomeState;
  /** Changes what there is in every step. */
  set(change: Partial<HomeCommon>): void;
  /** Changes a step's own part; does nothing where the session is at another step. */
  change<S extends HomeStep>(step: S, part: Partial<StepParts[S]>): void;
  /** Goes to a step, whose own part begins anew but for what is given. */
  enter<S extends HomeStep>(step: S, part?: Partial<StepParts[S]>, common?: Partial<HomeCommon>): void;
}

export function createHomeStore(): HomeStore {
  const store = createStore<HomeState>(() => ({ ...initialCommon, step: 'plan', ...freshParts.plan }));
  return {
    store,
    get: store.getState,
    set: (change) => store.setState(change),
    change(step, part) {
      const state = store.getState();
      if (isAtStep(state, step)) store.setState({ ...state, ...part }, true);
    },
    enter(step, part, common) {
      const kept = commonOf(store.getState());
      const next = { ...kept, ...common, step, ...freshParts[step], ...part };
      store.setState(next as unknown as HomeState, true);
    },
  };
}
