import { findExercise } from '#core/exercises/exercises';
import { cautionsOf } from '#documents/plan/cautions';
import type { SetStep } from '#documents/plan/planSteps';
import { longestText, type SessionDocument, type SessionSet } from '#documents/session/sessionDocument';
import { answersOf, type HomeSet, type HomeState } from './homeState';

/** The session so far, with the sets that were not discarded. */
export function sessionOf(
  { id, startedAt, endedAt }: Pick<SessionDocument, 'id' | 'startedAt' | 'endedAt'>,
  state: HomeState,
): SessionDocument {
  const { plan, painBefore, painBySide, check, wentOnAbove, endedBecause, settles, isUnfilmed, sets } = state;
  return {
    format: 'overfoot-visit',
    version: 3,
    id,
    startedAt,
    endedAt,
    patient: plan?.patient ?? '',
    planId: plan?.id ?? null,
    painLimit: cautionsOf(plan).painLimit,
    painBefore,
    painBySide,
    check,
    wentOnAbove: [...wentOnAbove],
    endedBecause,
    settles: [...settles],
    isUnfilmed,
    silence: null,
    ...answersOf(state),
    sets: sets.filter(({ isDiscarded }) => !isDiscarded).map(sessionSetOf),
  };
}

function sessionSetOf({ result, recordingId, painDuring }: HomeSet): SessionSet {
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
  };
}

/** Whether a set is filmed. */
export function isFilmed({ item }: SetStep): boolean {
  return findExercise(item.task).preparation.isFilmed;
}
