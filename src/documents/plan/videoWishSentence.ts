import { message } from '#words/messages/message';
import type { PlanDocument } from './planDocument';

/** How much of the video is wished for, in words for the patient; null where there is no wish, or nothing is sent. */
export function videoWishSentence({
  videoWish,
  returnKeys,
}: Pick<PlanDocument, 'videoWish' | 'returnKeys'>): string | null {
  if (videoWish === null || returnKeys.length === 0) return null;
  return message(`wish.${videoWish}`);
}
