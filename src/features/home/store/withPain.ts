import type { Side } from '#core/protocol/side';
import { worseKnee } from '#documents/session/worseKnee';
import type { HomeCommon } from './homeState';

type PainBySide = HomeCommon['painBySide'];

/**
 * An answer to how much it hurts, before or after the exercise.
 *
 * @param side  which knee, where both are asked; null: both
 * @returns  the pain of each knee, where both are asked, and that of the one that hurts more
 */
export function withPain(
  painBySide: PainBySide,
  when: 'before' | 'after',
  side: Side | null,
  score: number,
): { painBySide: PainBySide; most: number } {
  if (painBySide === null) return { painBySide, most: score };
  const knees = side === null ? { left: score, right: score } : { ...painBySide[when], [side]: score };
  return { painBySide: { ...painBySide, [when]: knees }, most: worseKnee(knees) ?? score };
}
