import type { Side } from '#core/protocol/side';

/** The pain of the knee that hurts more, 0 to 10; null where neither was told. */
export function worseKnee({ left, right }: Record<Side, number | null>): number | null {
  return left === null || right === null ? (left ?? right) : Math.max(left, right);
}
