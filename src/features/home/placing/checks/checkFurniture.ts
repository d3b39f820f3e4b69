import { findExercise, type ExerciseId, type Task } from '#core/exercises/exercises';
import type { PlanItem } from '#documents/plan/planDocument';
import { message } from '#words/messages/message';
import type { PlacingFacts } from '../placing';
import type { PlacingFinding } from './placingFinding';

/** What a task stands or falls with; one question is asked for each task. */
export const furniture = ['chair', 'step', 'support'] as const;

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
  return isFurniturePlaced
    ? {
        state: 'good',
        source: 'asked',
        sentence: message(`placing.${piece}.confirmed`),
        short: message(`placing.${piece}`),
        arrow: 'none',
      }
    : {
        state: 'unknown',
        source: 'asked',
        sentence: message(`placing.${piece}.ask`),
        short: message(`placing.${piece}.open`),
        arrow: 'none',
      };
}

/** The same in few words, for anyone who was asked on another day; null where the exercise needs none of them. */
export function furnitureReminder(id: ExerciseId): string | null {
  const piece = pieceOf(findExercise(id));
  return piece === undefined ? null : message(`placing.${piece}.reminder`);
}

/** Whether two exercises need the same of them, so that nothing is moved in between. */
export function needsSameFurniture(one: Pick<PlanItem, 'task'>, other: Pick<PlanItem, 'task'>): boolean {
  return pieceOf(findExercise(one.task)) === pieceOf(findExercise(other.task));
}

function pieceOf({ preparation }: Pick<Task, 'preparation'>): (typeof furniture)[number] | undefined {
  return furniture.find((piece) => preparation.needs.includes(piece));
}
