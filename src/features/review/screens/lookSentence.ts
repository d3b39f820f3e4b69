import type { ShownRecording } from '#shell/tracking/shownRecording';
import { formatTime } from '#words/formatTime';

/** Which look at the pictures the angles rest on. */
export function lookSentence({ closer, observed }: Pick<ShownRecording, 'closer' | 'observed'>): string {
  if (closer === null) return 'The joints were found by one network.';
  const both = 'The joints were found by two networks, each of which also saw the mirror image';
  // The last frames of a recording are seldom among those looked at.
  const isWhole = (observed.timesMs.at(-1) ?? 0) - closer.untilMs < 1000;
  return isWhole ? `${both}.` : `${both}, up to ${formatTime(closer.untilMs)}; after that, by one network.`;
}
