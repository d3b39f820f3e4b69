import type { Stake } from '#features/sharing/store/saveParcel';

/** What another version of a kept session would change here, and what stays: sentences. */
export function stakeWords(stake: Stake): string {
  const { workedOn, videosAdded, videosReplaced, setsChanged, setsAdded, hasOtherAnswers } = stake;
  const changes = [
    hasOtherAnswers && 'other answers',
    setsChanged > 0 && `other results of ${sets(setsChanged)}`,
    setsAdded > 0 && `${sets(setsAdded)} more`,
    videosAdded > 0 && `the video of ${sets(videosAdded)}`,
    videosReplaced > 0 && `another video of ${sets(videosReplaced)}, in place of the one that is kept`,
  ].filter((change) => change !== false);
  const brings = `It brings ${changes.join('; ')}.`;
  if (workedOn === 0) return brings;
  return `${brings} Your remarks, corrections, limits and the mark ‘reviewed’ on ${sets(workedOn)} stay.`;
}

function sets(count: number): string {
  return count === 1 ? 'one set' : `${count} sets`;
}
