import type { PlanItem } from '#documents/plan/planDocument';
import type { LastTime } from './lastTime';
import type { LeftToday } from './leftToday';
import type { UnsentSession } from './unsentSessions';

/** What is shown beside the plan before a session begins. */
export interface Today {
  /** Of the latest plan; null where nothing was done yet. */
  last: LastTime | null;
  /** Whether the latest plan was followed here before: its session begins with how much it hurts. */
  isFollowed: boolean;
  /** When the latest plan was followed, ISO 8601, newest first. */
  doneAt: readonly string[];
  /** The session of before today after which nobody said yet how the knee was; null where there is none. */
  askedAfter: string | null;
  /** Since when it was not followed, where that is to be asked about; ISO 8601, otherwise null. */
  silentSince: string | null;
  /** The latest plan's items as they stand; none without a plan. */
  items: readonly PlanItem[];
  /** What is left of the latest plan, where a session of today was broken off; otherwise null. */
  left: LeftToday | null;
  /** Of all plans, newest first. */
  unsent: readonly UnsentSession[];
}

export const nothingYet: Today = {
  last: null,
  isFollowed: false,
  doneAt: [],
  askedAfter: null,
  silentSince: null,
  items: [],
  left: null,
  unsent: [],
};
