import { createContext, use, type ReactNode } from 'react';
import { useStore } from 'zustand';
import type { App } from './createApp';
import type { AppState } from './appState';
import type { Recording } from './recording';

const AppContext = createContext<App | null>(null);

export function AppProvider({ app, children }: { app: App; children: ReactNode }) {
  return <AppContext value={app}>{children}</AppContext>;
}

/** The app that this page runs. */
export function useApp(): App {
  const app = use(AppContext);
  if (app === null) throw new Error('useApp needs an AppProvider above it.');
  return app;
}

/** A part of the state; the component is drawn again when that part changes. */
export function useAppState<Part>(select: (state: AppState) => Part): Part {
  return useStore(useApp().store, select);
}

/** The recording as it is now; drawn again when it is replaced. */
export function useRecording(): Recording | null {
  const app = useApp();
  useStore(app.store, ({ revision }) => revision);
  return app.recording();
}
