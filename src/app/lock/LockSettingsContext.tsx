import { createContext, use, type ReactNode } from 'react';
import { useStore } from 'zustand';
import type { LockSettings, LockSettingsState } from './createLockSettings';

const LockSettingsContext = createContext<LockSettings | null>(null);

export function LockSettingsProvider({
  settings,
  children,
}: {
  settings: LockSettings;
  children: ReactNode;
}) {
  return <LockSettingsContext value={settings}>{children}</LockSettingsContext>;
}

/** Turning the passphrase lock on and off. */
export function useLockSettings(): LockSettings {
  const settings = use(LockSettingsContext);
  if (settings === null) throw new Error('useLockSettings needs a LockSettingsProvider above it.');
  return settings;
}

/** A part of its state; the component is drawn again when that part changes. */
export function useLockSettingsState<Part>(select: (state: LockSettingsState) => Part): Part {
  return useStore(useLockSettings().store, select);
}
