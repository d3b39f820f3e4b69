import { createContext, use } from 'react';
import { useStore, type StoreApi } from 'zustand';

/** Anything with actions and a store in which their outcome appears. */
interface Owner {
  store: StoreApi<unknown>;
}

type StateOf<T extends Owner> = ReturnType<T['store']['getState']>;

/**
 * How screens reach a feature's store: a provider above them and two hooks.
 *
 * @param name  of the provider, for the error where it is missing
 */
export function createStoreContext<T extends Owner>(name: string) {
  const Context = createContext<T | null>(null);

  function useOwner(): T {
    const owner = use(Context);
    if (owner === null) throw new Error(`This screen needs a ${name} above it.`);
    return owner;
  }

  /** Selects a part of the state; the component is drawn again when that part changes. */
  function useOwnerState<Part>(select: (state: StateOf<T>) => Part): Part {
    return useStore(useOwner().store as StoreApi<StateOf<T>>, select);
  }

  return { Provider: Context, useOwner, useOwnerState };
}
