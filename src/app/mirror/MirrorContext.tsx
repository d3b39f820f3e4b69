import { createContext, use, type ReactNode } from 'react';
import { useStore } from 'zustand';
import type { Mirror, MirrorState } from './createMirror';

const MirrorContext = createContext<Mirror | null>(null);

export function MirrorProvider({ mirror, children }: { mirror: Mirror; children: ReactNode }) {
  return <MirrorContext value={mirror}>{children}</MirrorContext>;
}

/** The live mirror of this page. */
export function useMirror(): Mirror {
  const mirror = use(MirrorContext);
  if (mirror === null) throw new Error('useMirror needs a MirrorProvider above it.');
  return mirror;
}

/** A part of its state; the component is drawn again when that part changes. */
export function useMirrorState<Part>(select: (state: MirrorState) => Part): Part {
  return useStore(useMirror().store, select);
}
