import { findSetup } from '#core/exercises/taskSetups';
import { longestText, type VisitDocument, type VisitSet } from '#documents/session/visitDocument';
import type { SetStep } from '#documents/plan/planSteps';
import type { HomeSet, HomeState } from './homeState';

/** The visit as it stands, with the sets that were not discarded. */
export function visitOf(
  { id, startedAt, endedAt }: Pick<VisitDocument, 'id' | 'startedAt' | 'endedAt'>,
  { plan, painBefore, painAfter, effort, remark, sets }: HomeState,
): VisitDocument {
  return {
    format: 'overfoot-visit',
    version: 1,
    id,
    startedAt,
    endedAt,
    patient: plan?.patient ?? '',
    planId: plan?.id ?? null,
    painBefore,
    painAfter,
    effort,
    remark,
    sets: sets.filter(({ isDiscarded }) => !isDiscarded).map(visitSetOf),
  };
}

function visitSetOf({ result, sessionId, painDuring }: HomeSet): VisitSet {
  const { itemIndex: item, task, side, number, prescribed, cutShort, heldMs } = result;
  const prescribedRepetitions = prescribed === 0 ? null : prescribed;
  return {
    sessionId,
    item,
    task,
    side,
    number,
    prescribedRepetitions,
    painDuring,
    cutShort: cutShort?.slice(0, longestText.cutShort) ?? null,
    heldMs,
  };
}

/** Whether a set is filmed. */
export function isFilmed({ item, side }: SetStep): boolean {
  return findSetup(item.task, side).camera !== null;
}
