import type { Side } from '#core/protocol/side';

/** A question about 'your knee', of one of both. */
export function kneeQuestion(question: string, side: Side): string {
  return question.replace('your knee', `your ${side} knee`);
}
