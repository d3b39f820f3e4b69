import type { Limits } from '#core/protocol/limits';
import type { SessionSet } from '../session/sessionDocument';
import type { PlanDocument } from './planDocument';

/** The limits that a plan gives for a line of a session; null where it gives none. */
export function plannedLimits(
  plan: Pick<PlanDocument, 'items'> | null | undefined,
  { item: place, task }: Pick<SessionSet, 'item' | 'task'>,
): Limits | null {
  const item = plan?.items[place];
  return item?.kind === 'repetitions' && item.task === task ? item.limits : null;
}
