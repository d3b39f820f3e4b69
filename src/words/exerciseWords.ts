import { findExercise, type ExerciseId, type TaskId } from '#core/exercises/exercises';
import type { FigureMoment } from '#core/exercises/figure/stance';
import type { Side } from '#core/protocol/side';
import { message, messageLines } from './messages/message';

/** As it appears on screens. */
export function exerciseName(id: ExerciseId): string {
  return message(`exercise.${id}.name`);
}

/** How to recognise the working side, one sentence. */
export function sideHint(id: TaskId): string {
  return message(`exercise.${id}.side-hint`);
}

/** What to put where, and how to stand, in order. Common practice, no source. */
export function exerciseSetup(id: ExerciseId, side: Side): string[] {
  return messageLines(`exercise.${id}.setup`, { side });
}

/** Said before the countdown. */
export function startLine(id: ExerciseId, side: Side): string {
  return message(`exercise.${id}.start`, { side });
}

/** How it is done, in order. */
export function exerciseSteps(id: ExerciseId, side: Side): string[] {
  return messageLines(`exercise.${id}.steps`, { side });
}

/** Besides those that apply to every exercise. */
export function exerciseCautions(id: ExerciseId): string[] {
  return messageLines(`exercise.${id}.cautions`);
}

/** Where it should be felt, and where not, one sentence. Common practice, no source. */
export function exerciseFelt(id: ExerciseId, side: Side): string {
  return message(`exercise.felt.${findExercise(id).felt}`, { side });
}

/** Where the camera stands; null where none is needed. Common practice, no source. */
export function cameraPlace(id: ExerciseId): string | null {
  return findExercise(id).preparation.isFilmed ? message('exercise.camera') : null;
}

/** What the figure shows at a moment, in a word or two. */
export function momentWords(id: ExerciseId, moment: FigureMoment): string {
  const exercise = findExercise(id);
  return message(`figure.${exercise.kind === 'hold' ? 'hold' : exercise.shape}.${moment}`);
}
