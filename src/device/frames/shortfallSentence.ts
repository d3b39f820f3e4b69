import { message } from '#words/messages/message';
import type { VideoFacts } from './frameSource';

/** A few frames at the end may be undecodable in any file; more than this share is a damaged one. */
const bearableShare = 0.02;

/**
 * The message when a video gave fewer frames than announced, the sign of a damaged or truncated file.
 *
 * @param framesRead  frames that came
 * @returns null where (nearly) all came
 */
export function shortfallSentence(facts: VideoFacts, framesRead: number): string | null {
  const lost = facts.expectedFrames - framesRead;
  if (lost <= Math.max(2, bearableShare * facts.expectedFrames)) return null;
  return message('video-trouble.shortfall', { read: framesRead, expected: facts.expectedFrames });
}
