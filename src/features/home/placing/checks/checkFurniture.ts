import type { Task } from '#core/exercises/exercises';
import type { PlacingFacts } from '../placing';
import type { PlacingFinding } from './placingFinding';

const furniture = ['chair', 'step'] as const;

/**
 * Chair or step: the camera can't see whether it stands firm, so the person is asked.
 *
 * @returns  null where the task needs neither
 */
export function checkFurniture(
  task: Task,
  { isFurniturePlaced = false }: PlacingFacts,
): PlacingFinding | null {
  const piece = furniture.find((piece) => task.preparation.needs.includes(piece));
  if (piece === undefined) return null;
  const ask =
    piece === 'chair'
      ? "Does the chair stand with its back against a wall, on a dry floor, so that it can't slide?"
      : 'Does the step stand firmly on a dry floor, with something to hold on to beside it?';
  return isFurniturePlaced
    ? {
        state: 'good',
        source: 'asked',
        sentence: `The ${piece} stands firmly, as you confirmed.`,
        short: `${piece === 'chair' ? 'Chair' : 'Step'} firm`,
        arrow: 'none',
      }
    : {
        state: 'unknown',
        source: 'asked',
        sentence: ask,
        short: `${piece === 'chair' ? 'Chair' : 'Step'} firm?`,
        arrow: 'none',
      };
}
