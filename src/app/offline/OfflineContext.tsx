import { createContext, use, type ReactNode } from 'react';
import { useStore } from 'zustand';
import type { Offline, OfflineState } from './createOffline';

const OfflineContext = createContext<Offline | null>(null);

export function OfflineProvider({ offline, children }: { offline: Offline; children: ReactNode }) {
  return <OfflineContext value={offline}>{children}</OfflineContext>;
}

/** What keeps this page on the device. */
export function useOffline(): Offline {
  const offline = use(OfflineContext);
  if (offline === null) throw new Error('useOffline needs an OfflineProvider above it.');
  return offline;
}

/** A part of its state; the component is drawn again when that part changes. */
export function useOfflineState<Part>(select: (state: OfflineState) => Part): Part {
  return useStore(useOffline().store, select);
}
