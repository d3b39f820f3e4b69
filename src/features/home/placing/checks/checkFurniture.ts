import { findExercise, type ExerciseId, type Task } from '#core/exercises/exercises';
import type { PlanItem } from '#documents/plan/planDocument';
import type { PlacingFacts } from '../placing';
import type { PlacingFinding } from './placingFinding';

/** What a task stands or falls with; one question is asked for each task. */
export const furniture = ['chair', 'step', 'support'] as const;

const pieces = {
  chair: {
    name: 'Chair',
    confirmed: 'The chair stands firmly, as you confirmed.',
    reminder: 'Chair against the wall, something firm within reach.',
    ask: 'Does the chair stand with its back against a wall, on a dry floor, so that it can’t slide? Is something firm to hold within reach?',
  },
  step: {
    name: 'Step',
    confirmed: 'The step stands firmly, as you confirmed.',
    reminder: 'Step firm on a dry floor, something to hold beside it.',
    ask: 'Does the step stand firmly on a dry floor, with something to hold on to beside it?',
  },
  support: {
    name: 'Support',
    confirmed: 'Something firm to hold is within reach, as you confirmed.',
    reminder: 'Something firm to hold within reach of one hand.',
    ask: 'Is something firm to hold within reach of one hand: a table, a worktop, the back of a heavy chair?',
  },
};

/**
 * Chair, step, or something to hold: the camera can't see whether it stands firm, so the person is asked.
 *
 * @returns  null where the task needs none of them
 */
export function checkFurniture(
  task: Task,
  { isFurniturePlaced = false }: PlacingFacts,
): PlacingFinding | null {
  const piece = pieceOf(task);
  if (piece === undefined) return null;
  const { name, ask, confirmed } = pieces[piece];
  return isFurniturePlaced
    ? {
        state: 'good',
        source: 'asked',
        sentence: confirmed,
        short: `${name} firm`,
        arrow: 'none',
      }
    : {
        state: 'unknown',
        source: 'asked',
        sentence: ask,
        short: `${name} firm?`,
        arrow: 'none',
      };
}

/** The same in few words, for anyone who was asked on another day; null where the exercise needs none of them. */
export function furnitureReminder(id: ExerciseId): string | null {
  const piece = pieceOf(findExercise(id));
  return piece === undefined ? null : pieces[piece].reminder;
}

/** Whether two exercises need the same of them, so that nothing is moved in between. */
export function needsSameFurniture(one: Pick<PlanItem, 'task'>, other: Pick<PlanItem, 'task'>): boolean {
  return pieceOf(findExercise(one.task)) === pieceOf(findExercise(other.task));
}

function pieceOf({ preparation }: Pick<Task, 'preparation'>): (typeof furniture)[number] | undefined {
  return furniture.find((piece) => preparation.needs.includes(piece));
}
