import { createContext, use, type ReactNode } from 'react';
import { useStore } from 'zustand';
import type { HomeApp } from './homeApp';
import type { HomeState } from './homeState';

const HomeContext = createContext<HomeApp | null>(null);

export function HomeProvider({ home, children }: { home: HomeApp; children: ReactNode }) {
  return <HomeContext value={home}>{children}</HomeContext>;
}

/** The home session that this page runs. */
export function useHome(): HomeApp {
  const home = use(HomeContext);
  if (home === null) throw new Error('useHome needs a HomeProvider above it.');
  return home;
}

/** A part of its state; the component is drawn again when that part changes. */
export function useHomeState<Part>(select: (state: HomeState) => Part): Part {
  return useStore(useHome().store, select);
}
