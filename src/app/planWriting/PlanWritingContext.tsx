import { createContext, use, type ReactNode } from 'react';
import { useStore } from 'zustand';
import type { PlanWriting, PlanWritingState } from './createPlanWriting';

const PlanWritingContext = createContext<PlanWriting | null>(null);

export function PlanWritingProvider({ writing, children }: { writing: PlanWriting; children: ReactNode }) {
  return <PlanWritingContext value={writing}>{children}</PlanWritingContext>;
}

/** The plan that is being written. */
export function usePlanWriting(): PlanWriting {
  const writing = use(PlanWritingContext);
  if (writing === null) throw new Error('usePlanWriting needs a PlanWritingProvider above it.');
  return writing;
}

/** A part of its state; the component is drawn again when that part changes. */
export function usePlanWritingState<Part>(select: (state: PlanWritingState) => Part): Part {
  return useStore(usePlanWriting().store, select);
}
