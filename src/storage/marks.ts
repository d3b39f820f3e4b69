/**
 * Marks that this program holds while it works on something: other tabs see them, and they go with the tab, however it
 * ends.
 */
export interface Marks {
  /**
   * Puts up a mark, waiting while another tab holds it.
   *
   * @returns the way to take it down
   * @throws the signal's reason when the waiting is cancelled
   */
  hold(name: string, signal?: AbortSignal): Promise<() => void>;
  /** Names that are held now, in any tab. */
  held(): Promise<Set<string>>;
}

/** Marks as the browser's locks; without these (pages over http) only this tab's own are known. */
export function createMarks(locks: LockManager | undefined = globalThis.navigator?.locks): Marks {
  return locks === undefined ? createOwnMarks() : createLockMarks(locks);
}

function createLockMarks(locks: LockManager): Marks {
  return {
    hold: (name, signal) =>
      new Promise((resolve, reject) => {
        const untilReleased = () => new Promise<void>((release) => resolve(() => release()));
        locks.request(name, signal === undefined ? {} : { signal }, untilReleased).catch(reject);
      }),
    held: async () => new Set((await locks.query()).held?.flatMap(({ name }) => name ?? [])),
  };
}

function createOwnMarks(): Marks {
  const held = new Map<string, Promise<void>>();
  return {
    async hold(name, signal) {
      while (held.has(name)) {
        await held.get(name);
        signal?.throwIfAborted();
      }
      let release = () => undefined as void;
      held.set(
        name,
        new Promise((resolve) => {
          release = () => {
            held.delete(name);
            resolve();
          };
        }),
      );
      return release;
    },
    held: () => Promise.resolve(new Set(held.keys())),
  };
}
