import { describe, expect, it } from 'vitest';
import { lookSentence } from '#features/review/screens/lookSentence';
import { smallTrack } from '../../../../support/smallTrack';

const observed = smallTrack([null, null, null], [0, 10_000, 20_000]);
const seen = (untilMs: number | null) =>
  lookSentence({
    observed:
      untilMs === null
        ? observed
        : { ...observed, closer: { network: 'MoveNet Thunder', frames: 12, untilMs } },
  });

describe('lookSentence(recording)', () => {
  it('tells one network from two', () => {
    expect(seen(null)).toBe('The joints were found by one network.');
    expect(seen(20_000)).toMatch(/two networks, each of which also saw the mirror image\.$/);
  });

  it('says up to where a closer look came that was stopped', () => {
    expect(seen(12_000)).toMatch(/up to 12\.0 s; after that, by one network\.$/);
  });
});
