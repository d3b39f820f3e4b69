import type { ShownRecording } from '#shell/tracking/shownRecording';
import { formatTime } from '#words/formatTime';

/** Which look at the pictures the angles rest on. */
export function lookSentence({ observed: { closer, timesMs } }: Pick<ShownRecording, 'observed'>): string {
  if (closer === undefined) return 'The joints were found by one network.';
  const both = 'The joints were found by two networks, each of which also saw the mirror image';
  // The last frames of a recording are seldom among those looked at.
  const isWhole = (timesMs.at(-1) ?? 0) - closer.untilMs < 1000;
  return isWhole ? `${both}.` : `${both}, up to ${formatTime(closer.untilMs)}; after that, by one network.`;
}
