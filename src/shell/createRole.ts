import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Notes } from './notes';

const roles = ['exercises', 'treats'] as const;
/** What somebody uses this device for: their own exercises, or treating people. */
export type Role = (typeof roles)[number];

export interface RoleKeeper {
  /** Null for a newcomer. */
  readonly store: StoreApi<{ role: Role | null }>;
  choose(role: Role): void;
}

/** Remembered on this device, so that the page opens where its person works. */
export function createRole(notes: Notes): RoleKeeper {
  const kept = roles.find((role) => role === notes.read('role')) ?? null;
  const store = createStore<{ role: Role | null }>(() => ({ role: kept }));
  return {
    store,
    choose(role) {
      store.setState({ role });
      void notes.write('role', role).catch(() => undefined); // Asked again the next time.
    },
  };
}
