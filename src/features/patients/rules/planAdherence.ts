import { adherence, type Adherence, type Occasion, type Outcome } from '#core/adherence/adherence';
import { calendarDay } from '#core/calendarDay';
import type { PauseRecord } from '#documents/patient/caseEntries';
import type { PlanDocument } from '#documents/plan/planDocument';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { pausesInForce } from './pauses';

/** A plan with what came of it, as far as it decides how much was due and done. */
export interface Following {
  /** Days since 1970, by the calendar. */
  startDay: number;
  /** Null where the plan leaves open how often. */
  perWeek: number | null;
  occasions: Occasion[];
}

export function followingOf(
  { id, createdAt, perWeek }: Pick<PlanDocument, 'id' | 'createdAt' | 'perWeek'>,
  sessions: readonly ListedSession[],
): Following {
  return {
    startDay: calendarDay(createdAt),
    perWeek,
    occasions: sessions
      .filter(({ plan, silence }) => plan?.id === id && silence === null)
      .flatMap((session) => {
        const outcome = outcomeOf(session);
        return outcome === null ? [] : [{ day: calendarDay(session.startedAt), outcome }];
      }),
  };
}

/**
 * Null where the plan leaves open how often.
 *
 * @param pauses  of the patient's record
 * @param nowMs  since 1970
 */
export function planAdherence(
  { occasions, startDay, perWeek }: Following,
  pauses: readonly PauseRecord[],
  nowMs: number,
): Adherence | null {
  if (perWeek === null) return null;
  const period = { startDay, perWeek, today: calendarDay(nowMs), pauses: pausesInForce(pauses) };
  return adherence(occasions, period);
}

/** Null for a session that was opened and left before anything was done. */
function outcomeOf({ endedBecause, isUnfilmed, sets }: ListedSession): Outcome | null {
  switch (endedBecause?.reason) {
    case 'pain':
      return 'stopped';
    case 'sign':
    case 'gave-way':
    case 'locked':
    case 'dizzy':
      return 'held';
    case undefined:
      return sets.length === 0 ? null : isUnfilmed ? 'unfilmed' : 'done';
    default:
      return 'given-up';
  }
}
