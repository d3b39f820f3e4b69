import type { CorrectionChange } from '#core/correction/correction';
import { formatTime } from './formatTime';

/** What a correction did, in a sentence. */
export function correctionSentence(change: CorrectionChange): string {
  switch (change.kind) {
    case 'exclude':
      return `The repetition at ${formatTime(change.atMs)} does not count: ${change.reason}`;
    case 'include':
      return `The repetition at ${formatTime(change.atMs)} counts again.`;
    case 'split':
      return `Split in two at ${formatTime(change.atMs)}.`;
    case 'join':
      return `The repetitions at ${formatTime(change.atMs)} and ${formatTime(change.withMs)} are one.`;
    case 'move-edge':
      return `The ${change.edge} of the repetition at ${formatTime(change.atMs)} is set to ${formatTime(change.toMs)}.`;
    case 'move-point':
      return `${pointWords(change.point)} was placed by hand at ${formatTime(change.timeMs)}.`;
    case 'working-side':
      return `The ${change.side} leg is the working leg.`;
    case 'mirrored':
      return change.isMirrored ? 'The video is mirrored.' : 'The video is not mirrored.';
  }
}

function pointWords(point: string): string {
  const [side, ...rest] = point.split('_');
  const joint = rest.join(' ') === 'foot index' ? 'toe' : rest.join(' ');
  return `The ${side} ${joint}`;
}
