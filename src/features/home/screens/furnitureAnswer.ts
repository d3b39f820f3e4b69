import { findExercise } from '#core/exercises/exercises';
import type { PlanItem } from '#documents/plan/planDocument';
import { message } from '#words/messages/message';

/** How the question about chair, step and support is answered with yes. */
export function furnitureAnswer({ task }: PlanItem): string {
  const { needs } = findExercise(task).preparation;
  const isFurniture = needs.includes('chair') || needs.includes('step');
  return message(isFurniture ? 'film.stands-firm' : 'film.have-support');
}
