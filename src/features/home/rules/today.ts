import type { LastTime } from './lastTime';
import type { UnsentSession } from './unsentSessions';

/** What is shown beside the plan before a session begins. */
export interface Today {
  /** Of the latest plan; null where nothing was done yet. */
  last: LastTime | null;
  /** Whether the latest plan was followed here before: its session begins with how much it hurts. */
  isFollowed: boolean;
  /** When the latest plan was followed, ISO 8601, newest first. */
  doneAt: readonly string[];
  /** Since when it was not followed, where that is to be asked about; ISO 8601, otherwise null. */
  silentSince: string | null;
  /** Of all plans, newest first. */
  unsent: readonly UnsentSession[];
}

export const nothingYet: Today = {
  last: null,
  isFollowed: false,
  doneAt: [],
  silentSince: null,
  unsent: [],
};
