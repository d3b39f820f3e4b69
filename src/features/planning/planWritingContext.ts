import { createStoreContext } from '#shell/createStoreContext';
import type { PlanWriting } from './store/createPlanWriting';

/** The plan that is being written. */
export const {
  Provider: PlanWritingProvider,
  useOwner: usePlanWriting,
  useOwnerState: usePlanWritingState,
} = createStoreContext<PlanWriting>('PlanWritingProvider');
