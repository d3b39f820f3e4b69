import type { VideoPart } from '../parcel/videoPart';
import type { PlanDocument } from './planDocument';

const wishes: Record<VideoPart, string> = {
  none: 'no video is needed.',
  'out-of-line': 'please include the repetitions out of line as a video.',
  'without-head': 'please include the video without your head.',
  whole: 'please include the whole video.',
};

/** How much of the video is wished for, in words for the patient; null where there is no wish, or nothing is sent. */
export function videoWishSentence({
  videoWish,
  returnKey,
}: Pick<PlanDocument, 'videoWish' | 'returnKey'>): string | null {
  if (videoWish === null || returnKey === null) return null;
  return `When you send a session, ${wishes[videoWish]} You decide each time what you send.`;
}
