import { findTask } from '../exercises/exercises';
import type { Load } from '../protocol/load';
import type { ConditionId, SetConditions } from './setConditions';

/** Seats and steps are alike up to this difference, cm. Our choice, no source: what a tape measure is read to. */
export const sameHeightCm = 1;

/** A condition that is not the same in both sets; null = not noted. */
export type ConditionDifference = {
  [Id in ConditionId]: { condition: Id; earlier: SetConditions[Id]; later: SetConditions[Id] };
}[ConditionId];

export interface ConditionComparison {
  /** None: the sets are alike, as far as anything was noted. */
  differences: ConditionDifference[];
  /** Noted of neither set, though the task has it. Sets may be compared, saying so. */
  notNoted: ConditionId[];
}

/** In the order in which they are said. */
const conditionIds: readonly ConditionId[] = [
  'task',
  'side',
  'stage',
  'seatHeightCm',
  'stepHeightCm',
  'support',
  'load',
  'footwear',
  'freeLeg',
  'feedback',
  'bendsFilmed',
  'isTest',
  'measuringVersion',
];

/**
 * What two sets differ in. Sets with any difference are not compared: a lower seat alone makes the knee go farther in.
 *
 * @param except  conditions that are meant to differ, such as the side where two legs are compared
 * Missing: noted of one set and not of the other is a difference; noted of neither is in `notNoted`, where the task
 *   has the condition at all
 */
export function compareConditions(
  earlier: SetConditions,
  later: SetConditions,
  except: readonly ConditionId[] = [],
): ConditionComparison {
  const compared = conditionIds.filter((id) => !except.includes(id));
  return {
    differences: compared
      .filter((id) => !isSame(id, earlier, later))
      .map((id) => ({ condition: id, earlier: earlier[id], later: later[id] }) as ConditionDifference),
    notNoted: compared.filter(
      (id) => earlier[id] === null && later[id] === null && isConditionOf(id, earlier.task),
    ),
  };
}

/**
 * What sets differ in that are to be put together in a mean or a course: each is compared with the first.
 *
 * Heights drift no farther than 1 cm from the first set's, so any two are within 2 cm.
 *
 * @param sets  at least one
 * @returns  the first comparison with a difference; else the first of all, null for a single set
 */
export function compareAll(
  sets: readonly SetConditions[],
  except: readonly ConditionId[] = [],
): ConditionComparison | null {
  const [first, ...others] = sets;
  if (first === undefined) throw new RangeError('At least one set is needed to compare conditions.');
  const comparisons = others.map((other) => compareConditions(first, other, except));
  return comparisons.find(({ differences }) => differences.length > 0) ?? comparisons[0] ?? null;
}

function isSame(id: ConditionId, earlier: SetConditions, later: SetConditions): boolean {
  if (id === 'seatHeightCm' || id === 'stepHeightCm') return isSameHeight(earlier[id], later[id]);
  if (id === 'load') return isSameLoad(earlier.load, later.load);
  return earlier[id] === later[id];
}

function isSameHeight(one: number | null, other: number | null): boolean {
  if (one === null || other === null) return one === other;
  return Math.abs(one - other) <= sameHeightCm;
}

function isSameLoad(one: Load | null, other: Load | null): boolean {
  if (one === null || other === null) return one === other;
  if (one.kind === 'none' || other.kind === 'none') return one.kind === other.kind;
  return one.kind === other.kind && one.where === other.where && one.level.trim() === other.level.trim();
}

/** Whether a set of the task has this at all: a seat, a step, a leg in the air. */
function isConditionOf(id: ConditionId, taskId: SetConditions['task']): boolean {
  const { preparation, onBothFeet } = findTask(taskId);
  if (id === 'seatHeightCm') return preparation.needs.includes('chair');
  if (id === 'stepHeightCm') return preparation.needs.includes('step');
  if (id === 'freeLeg') return !onBothFeet;
  return id !== 'stage';
}
