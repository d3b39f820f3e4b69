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

/** What every screen works with: each can be asked to do something, and tells in its store what has become of it. */
interface Page {
  app: App;
  /** What keeps the page itself on the device. */
  offline: Offline;
}

/** What is fetched and created when a screen that works with it is first shown. */
export interface FeatureParts {
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
}

const PageContext = createContext<Page | null>(null);
const FeatureContext = createContext<Partial<FeatureParts>>({});

export function PageProvider({ page, children }: { page: Page; children: ReactNode }) {
  return <PageContext value={page}>{children}</PageContext>;
}

export function FeatureProvider(props: { parts: Partial<FeatureParts>; children: ReactNode }) {
  return <FeatureContext value={props.parts}>{props.children}</FeatureContext>;
}

function usePage(): Page {
  const page = use(PageContext);
  if (page === null) throw new Error('Screens need a PageProvider above them.');
  return page;
}

/** A hook that gives a feature of the shown screen. */
function feature<Name extends keyof FeatureParts>(name: Name) {
  return function useFeature(): FeatureParts[Name] {
    const part = use(FeatureContext)[name];
    if (part === undefined) throw new Error(`This screen was shown without its feature "${name}".`);
    return part;
  };
}

export const useApp = () => usePage().app;
export const useHome = feature('home');
export const useInbox = feature('inbox');
export const usePlanWriting = feature('writing');
export const useClinic = feature('clinic');
export const useSending = feature('sending');
export const useMirror = feature('mirror');
export const useBackup = feature('backup');
export const useLockSettings = feature('lockSettings');
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
