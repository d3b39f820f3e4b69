import { max, sum } from 'd3-array';
import type { CountInLine } from '#core/chance/countInLine';
import type { SessionDocument } from '#documents/session/sessionDocument';

/** How the last session of a plan went, for one line. */
export interface LastTime {
  /** Of the session. */
  id: string;
  /** ISO 8601. */
  startedAt: string;
  sets: number;
  /** Most pain during a set, 0 to 10; null where it was not answered. */
  painDuring: number | null;
  /** Repetitions in line, the most likely number, of those that could be measured; null where none could. */
  inLine: { about: number; of: number } | null;
}

/**
 * The last session of a plan in which something was done; null where there is none.
 *
 * @param sessions  newest first
 */
export function lastSession(sessions: readonly SessionDocument[], planId: string): SessionDocument | null {
  return sessions.find((session) => session.planId === planId && session.sets.length > 0) ?? null;
}

/** @param counts  of the sets that could be measured */
export function lastTimeOf(
  { id, startedAt, sets }: SessionDocument,
  counts: readonly CountInLine[],
): LastTime {
  return {
    id,
    startedAt,
    sets: sets.length,
    painDuring: max(sets, ({ painDuring }) => painDuring) ?? null,
    inLine:
      counts.length === 0
        ? null
        : {
            about: sum(counts, ({ mode }) => mode),
            of: sum(counts, ({ chancesInLine }) => chancesInLine.length),
          },
  };
}
