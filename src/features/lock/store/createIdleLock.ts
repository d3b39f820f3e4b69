import type { Notes } from '#shell/notes';

/** How long nothing is done before the device locks itself, minutes; 0 for never. */
export const idleChoices = [5, 15, 30, 60, 0] as const;
export type IdleMinutes = (typeof idleChoices)[number];
/** Long enough to look through a session, short enough for a desk that is left. */
const usualMinutes: IdleMinutes = 15;

/** What locking after idle time needs from the page; tests hand in plain objects. */
export interface IdleWorld {
  notes: Pick<Notes, 'read' | 'write'>;
  isLocked: () => Promise<boolean>;
  /** Whether locking now would lose something, or end a recording. */
  isBusy: () => Promise<boolean>;
  lockNow: () => void;
  nowMs: () => number;
}

/** Locks the device once nothing was done for a while. */
export interface IdleLock {
  minutes(): IdleMinutes;
  setMinutes(minutes: IdleMinutes): Promise<void>;
  /** To be called whenever a key, a finger or the mouse is used. */
  touch(): void;
  /** To be called every few seconds, and when a computer wakes up. */
  look(): Promise<void>;
}

export function createIdleLock({ notes, isLocked, isBusy, lockNow, nowMs }: IdleWorld): IdleLock {
  let lastMs = nowMs();
  const minutes = () => {
    const kept = Number(notes.read('idle-lock') ?? usualMinutes);
    return idleChoices.find((choice) => choice === kept) ?? usualMinutes;
  };
  return {
    minutes,
    setMinutes: (chosen) => notes.write('idle-lock', String(chosen)),
    touch: () => (lastMs = nowMs()),
    async look() {
      const afterMs = minutes() * 60_000;
      if (afterMs === 0 || nowMs() - lastMs < afterMs) return;
      if ((await isLocked()) && !(await isBusy())) lockNow();
    },
  };
}
