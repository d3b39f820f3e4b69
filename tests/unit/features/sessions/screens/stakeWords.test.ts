import { describe, expect, it } from 'vitest';
import { stakeWords } from '#features/sessions/screens/stakeWords';

const nothing = {
  workedOn: 0,
  videosAdded: 0,
  videosReplaced: 0,
  setsChanged: 0,
  setsAdded: 0,
  hasOtherAnswers: false,
};

describe('stakeWords(stake)', () => {
  it('says what comes, and that what was done by hand stays', () => {
    expect(stakeWords({ ...nothing, videosAdded: 1 })).toBe('It brings the video of one set.');
    expect(stakeWords({ ...nothing, hasOtherAnswers: true, videosReplaced: 2, workedOn: 1 })).toBe(
      'It brings other answers; another video of 2 sets, in place of the one that is kept. ' +
        'Your remarks, corrections, limits and the mark ‘reviewed’ on one set stay.',
    );
    expect(stakeWords({ ...nothing, setsChanged: 2, setsAdded: 1 })).toBe(
      'It brings other results of 2 sets; one set more.',
    );
  });
});
