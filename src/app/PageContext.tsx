import { createContext, use, type ReactNode } from 'react';
import { useStore, type StoreApi } from 'zustand';
import type { Backup } from './backup/createBackup';
import type { App } from './createApp';
import type { HomeApp } from './home/homeApp';
import type { Inbox } from './inbox/createInbox';
import type { LockSettings } from './lock/createLockSettings';
import type { Mirror } from './mirror/createMirror';
import type { Offline } from './offline/createOffline';
import type { PlanWriting } from './planWriting/createPlanWriting';
import type { Recording } from './recording';
import type { Clinic } from './sending/createClinic';
import type { Sending } from './sending/createSending';

/** Everything that screens work with: each can be asked to do something, and tells in its store what has become of it. */
export interface Page {
  app: App;
  /** The session at home. */
  home: HomeApp;
  /** The kept sessions as they are listed. */
  inbox: Inbox;
  /** The plan that is being written. */
  writing: PlanWriting;
  /** Receiving sessions. */
  clinic: Clinic;
  /** Sending one. */
  sending: Sending;
  mirror: Mirror;
  /** One sealed file of everything that is kept. */
  backup: Backup;
  /** Turning the passphrase lock on and off. */
  lockSettings: LockSettings;
  /** What keeps the page itself on the device. */
  offline: Offline;
}

const PageContext = createContext<Page | null>(null);

export function PageProvider({ page, children }: { page: Page; children: ReactNode }) {
  return <PageContext value={page}>{children}</PageContext>;
}

function usePage(): Page {
  const page = use(PageContext);
  if (page === null) throw new Error('Screens need a PageProvider above them.');
  return page;
}

export const useApp = () => usePage().app;
export const useHome = () => usePage().home;
export const useInbox = () => usePage().inbox;
export const usePlanWriting = () => usePage().writing;
export const useClinic = () => usePage().clinic;
export const useSending = () => usePage().sending;
export const useMirror = () => usePage().mirror;
export const useBackup = () => usePage().backup;
export const useLockSettings = () => usePage().lockSettings;
export const useOffline = () => usePage().offline;

export const useAppState = stateOf(useApp);
export const useHomeState = stateOf(useHome);
export const useInboxState = stateOf(useInbox);
export const usePlanWritingState = stateOf(usePlanWriting);
export const useClinicState = stateOf(useClinic);
export const useSendingState = stateOf(useSending);
export const useMirrorState = stateOf(useMirror);
export const useBackupState = stateOf(useBackup);
export const useLockSettingsState = stateOf(useLockSettings);
export const useOfflineState = stateOf(useOffline);

/** Reads a part of a state; the component is drawn again when that part changes. */
function stateOf<State>(useOwner: () => { store: StoreApi<State> }) {
  return function usePartOfState<Part>(select: (state: State) => Part): Part {
    return useStore(useOwner().store, select);
  };
}

/** The recording as it is now; drawn again when it is replaced. */
export function useRecording(): Recording | null {
  const app = useApp();
  useStore(app.store, ({ revision }) => revision);
  return app.recording();
}
