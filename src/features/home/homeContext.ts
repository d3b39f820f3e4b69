import { createStoreContext } from '#shell/createStoreContext';
import type { HomeApp } from './store/homeApp';
import { partOf, type HomeStep, type StepParts } from './store/homeState';

/** The session at home. */
export const {
  Provider: HomeProvider,
  useOwner: useHome,
  useOwnerState: useHomeState,
} = createStoreContext<HomeApp>('HomeProvider');

/**
 * Selects from a step's own part of the state. A screen that is still there when its step was left sees the part as it
 * began.
 */
export function useHomeStep<S extends HomeStep, Part>(step: S, select: (part: StepParts[S]) => Part): Part {
  return useHomeState((state) => select(partOf(state, step)));
}
