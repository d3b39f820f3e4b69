import { message } from '#words/messages/message';

/** A time to wait, no more exact than is justified: 'a few seconds', 'about 40 seconds', 'about 3 minutes'. */
export function timeLeftWords(seconds: number): string {
  if (!Number.isFinite(seconds)) return message('tracking.left-unknown');
  if (seconds < 8) return message('tracking.left-little');
  if (seconds < 90) return message('tracking.left-seconds', { seconds: Math.round(seconds / 10) * 10 });
  return message('tracking.left-minutes', { minutes: Math.round(seconds / 60) });
}
