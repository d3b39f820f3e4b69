import type { SaidPain } from './homeState';

/** Whether it is known how much it hurts: of each knee, where both are asked. */
export function isPainAnswered({ painBefore, painBySide }: SaidPain): boolean {
  if (painBySide === null) return painBefore !== null;
  const { left, right } = painBySide.before;
  return left !== null && right !== null;
}
