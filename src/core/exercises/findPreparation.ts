import type { Side } from '../protocol/side';
import { findExercise, type ExerciseId } from './exercises';
import { forSide } from './forSide';
import type { Preparation } from './preparation';

/** How to get ready for an exercise, with its sentences for one working side. */
export function findPreparation(id: ExerciseId, side: Side): Preparation {
  const { preparation } = findExercise(id);
  return {
    ...preparation,
    steps: preparation.steps.map((step) => forSide(step, side)),
    startLine: forSide(preparation.startLine, side),
  };
}
