import { message } from './messages/message';

/**
 * A pain score in words. The 0 to 10 scale of pain is common practice; so are its words and their steps.
 *
 * @param score  0 to 10
 */
export function painWords(score: number): string {
  if (score <= 0) return message('pain.none');
  if (score <= 3) return message('pain.little');
  if (score <= 6) return message('pain.some');
  return score < 10 ? message('pain.strong') : message('pain.worst');
}

/**
 * An effort in words; the steps are common practice, no source.
 *
 * @param score  0 to 10
 */
export function effortWords(score: number): string {
  if (score <= 0) return message('effort.none');
  if (score <= 3) return message('effort.light');
  if (score <= 6) return message('effort.medium');
  return score < 10 ? message('effort.hard') : message('effort.most');
}
