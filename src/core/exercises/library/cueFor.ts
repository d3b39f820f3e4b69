import type { HoldId } from '../holds';
import type { TaskId } from '../tasks';
import { findEntry } from './findEntry';
import type { FaultDirection, Phase } from './libraryEntry';

/**
 * What to say when something goes wrong: of the task's faults in that direction the one that shows in that phase, else
 * the most usual one.
 *
 * @returns null where the library knows no such fault
 */
export function cueFor(task: TaskId | HoldId, direction: FaultDirection, phase: Phase): string | null {
  const alike = findEntry(task).faults.filter((fault) => fault.direction === direction);
  return (alike.find(({ phases }) => phases.includes(phase)) ?? alike[0])?.cue ?? null;
}
