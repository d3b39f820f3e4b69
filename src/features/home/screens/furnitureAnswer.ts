import { findExercise } from '#core/exercises/exercises';
import type { PlanItem } from '#documents/plan/planDocument';

/** How the question about chair, step and support is answered with yes. */
export function furnitureAnswer({ task }: PlanItem): string {
  const { needs } = findExercise(task).preparation;
  const isFurniture = needs.includes('chair') || needs.includes('step');
  return isFurniture ? 'Yes, it stands firm' : 'Yes, I have something to hold';
}
