import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import type { Setup } from '#core/measurement/measurement';
import { checkCameraHeight } from './checks/checkCameraHeight';
import { checkCameraLevel } from './checks/checkCameraLevel';
import { checkDistance } from './checks/checkDistance';
import { checkFrameRate } from './checks/checkFrameRate';
import { checkFurniture } from './checks/checkFurniture';
import { checkLight } from './checks/checkLight';
import { checkMiddle } from './checks/checkMiddle';
import { checkOnePerson } from './checks/checkOnePerson';
import { checkSquare } from './checks/checkSquare';
import { checkWholeBody } from './checks/checkWholeBody';
import { checkWorkingLeg } from './checks/checkWorkingLeg';
import type { Check } from './checks/placingFinding';
import { lastPart } from './lastPart';
import {
  placingCheckIds,
  type Placing,
  type PlacingCheck,
  type PlacingCheckId,
  type PlacingFacts,
} from './placing';
import { sightOf } from './sightOf';

/** Nothing older than this counts, ms. */
export const placingWindowMs = 2000;

/**
 * Checks that may stay unknown: not visible in every posture, not supplied by the caller, or covered by
 * another check.
 */
const mayStayUnknown: ReadonlySet<PlacingCheckId> = new Set(['light', 'one-person', 'camera-level']);

const seenChecks: Record<Exclude<PlacingCheckId, 'furniture'>, Check> = {
  light: checkLight,
  'one-person': checkOnePerson,
  'whole-body': checkWholeBody,
  distance: checkDistance,
  middle: checkMiddle,
  'working-leg': checkWorkingLeg,
  square: checkSquare,
  'camera-level': checkCameraLevel,
  'camera-height': checkCameraHeight,
  'frame-rate': checkFrameRate,
};

/**
 * Checks whether a person, as filmed now, can be measured, by the functions that measure a set later and
 * refuse what can't be measured. One evaluation, without memory; see createPlacing for what is shown live.
 *
 * @param window  joints of the last one to two seconds, at any times; anything older is left out
 * @param setup  task and working side of the set to come
 * @param goodBefore  checks that were good the last time: their limits are wider
 * @returns  the checks in order of importance, each with what to move and which way
 */
export function checkPlacing(
  window: KeypointTrack,
  setup: Setup,
  facts: PlacingFacts = {},
  goodBefore: ReadonlySet<PlacingCheckId> = new Set(),
): Placing {
  const sight = sightOf(lastPart(window, placingWindowMs), setup, facts);
  const checks = placingCheckIds.flatMap((id): PlacingCheck[] => {
    const found =
      id === 'furniture' ? checkFurniture(sight.task, facts) : seenChecks[id](sight, goodBefore.has(id));
    return found === null ? [] : [{ id, ...found }];
  });
  const first = checks.find(isInTheWay) ?? null;
  return { checks, ready: first === null, first };
}

function isInTheWay({ id, state }: PlacingCheck): boolean {
  return state === 'move' || (state === 'unknown' && !mayStayUnknown.has(id));
}
