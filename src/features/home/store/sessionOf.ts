import { findExercise } from '#core/exercises/exercises';
import { cautionsOf } from '#documents/plan/cautions';
import { notedConditions } from '#documents/plan/notedConditions';
import type { SetStep } from '#documents/plan/planSteps';
import {
  longestText,
  sessionVersion,
  type SessionDocument,
  type SessionSet,
} from '#documents/session/sessionDocument';
import { answersOf, type HomeSet, type HomeState } from './homeState';

/** The session so far, with the sets that were not discarded. */
export function sessionOf(
  { id, startedAt, endedAt }: Pick<SessionDocument, 'id' | 'startedAt' | 'endedAt'>,
  state: HomeState,
): SessionDocument {
  const { plan, painBefore, painBySide, check, afterLast, wentOnAbove, endedBecause } = state;
  const { settles, isUnfilmed, sets } = state;
  return {
    format: 'overfoot-visit',
    version: sessionVersion,
    id,
    startedAt,
    endedAt,
    patient: plan?.patient ?? '',
    planId: plan?.id ?? null,
    painLimit: cautionsOf(plan).painLimit,
    painBefore,
    painBySide,
    check,
    afterLast,
    wentOnAbove: [...wentOnAbove],
    endedBecause,
    settles: [...settles],
    isUnfilmed,
    silence: null,
    ...answersOf(state),
    sets: sets.filter(({ isDiscarded }) => !isDiscarded).map((set) => sessionSetOf(set, plan)),
  };
}

function sessionSetOf(
  { result, recordingId, painDuring, item: asked }: HomeSet,
  plan: HomeState['plan'],
): SessionSet {
  const { itemIndex: item, task, side, number, prescribed, cutShort, heldMs } = result;
  const prescribedRepetitions = prescribed === 0 ? null : prescribed;
  return {
    sessionId: recordingId,
    item,
    task,
    side,
    number,
    prescribedRepetitions,
    painDuring,
    cutShort: cutShort?.slice(0, longestText.cutShort) ?? null,
    heldMs,
    conditions: notedConditions(asked, plan),
  };
}

/** Whether a set is filmed. */
export function isFilmed({ item }: SetStep): boolean {
  return findExercise(item.task).preparation.isFilmed;
}
