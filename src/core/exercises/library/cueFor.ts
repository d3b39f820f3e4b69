import { findExercise, type ExerciseId } from '../exercises';
import type { FaultDirection, Phase } from './fault';

/**
 * What to say when something goes wrong: of the exercise's faults in that direction the one that shows in that phase,
 * else the most usual one.
 *
 * @returns null where the library knows no such fault
 */
export function cueFor(id: ExerciseId, direction: FaultDirection, phase: Phase): string | null {
  const alike = findExercise(id).faults.filter((fault) => fault.direction === direction);
  return (alike.find(({ phases }) => phases.includes(phase)) ?? alike[0])?.cue ?? null;
}
