/**
 * Named locks that this program holds while it works on something. Other tabs see them, and they are released
 * with the tab, however it ends.
 */
export interface Marks {
  /**
   * Acquires a mark, waiting while another tab holds it.
   *
   * @returns a function that releases it
   * @throws the signal's reason when the waiting is cancelled
   */
  hold(name: string, signal?: AbortSignal): Promise<() => void>;
  /** Names that are held now, in any tab. */
  held(): Promise<Set<string>>;
}

/**
 * Marks as the browser's web locks; without these (pages over http, settings that refuse storage) only this
 * tab's own are known.
 */
export function createMarks(locks: LockManager | undefined = globalThis.navigator?.locks): Marks {
  const own = createOwnMarks();
  if (locks === undefined) return own;
  const hold = (name: string, signal?: AbortSignal) =>
    new Promise<() => void>((resolve, reject) => {
      const untilReleased = () => new Promise<void>((release) => resolve(() => release()));
      locks.request(name, signal === undefined ? {} : { signal }, untilReleased).catch(reject);
    });
  const held = async () => new Set((await locks.query()).held?.flatMap(({ name }) => name ?? []));
  return {
    hold: (name, signal) => hold(name, signal).catch(unlessRefused(() => own.hold(name, signal))),
    held: () => held().catch(unlessRefused(() => own.held())),
  };
}

function unlessRefused<Value>(instead: () => Promise<Value>): (error: unknown) => Promise<Value> {
  return (error) => {
    if (error instanceof Error && error.name === 'SecurityError') return instead();
    throw error;
  };
}

function createOwnMarks(): Marks {
  const held = new Map<string, Promise<void>>();
  return {
    async hold(name, signal) {
      signal?.throwIfAborted();
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
