import type { Assessment } from './assessment';
import { heldAndHandAssessments } from './each/holdsAndHand';
import { movementAssessments } from './each/movements';
import { reachAssessments } from './each/reaches';

const listed = [...movementAssessments, ...reachAssessments, ...heldAndHandAssessments] as const;

export type AssessmentId = (typeof listed)[number]['id'];

/** Every test, in the order in which they are offered. */
export const assessments: readonly Assessment[] = listed;
export const assessmentIds: readonly AssessmentId[] = listed.map(({ id }) => id);

export function findAssessment(id: AssessmentId): Assessment {
  return assessments.find((assessment) => assessment.id === id)!;
}
