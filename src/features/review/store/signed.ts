import type { ReviewAdapters } from './reviewAdapters';
import type { ReviewState } from './reviewState';

/** Who sets something, and when. */
export function signed(
  { reviewer }: Pick<ReviewState, 'reviewer'>,
  { now }: Pick<ReviewAdapters, 'now'>,
): { by: string; at: string } {
  return { by: reviewer, at: now().toISOString() };
}
