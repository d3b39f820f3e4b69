import { describe, expect, it } from 'vitest';
import { lastPart } from '#features/home/placing/lastPart';
import { smallTrack } from '../../../../support/smallTrack';

describe('lastPart(track, spanMs)', () => {
  const track = smallTrack(
    [{ nose: [1, 2] }, { nose: [3, 4] }, { nose: [5, 6] }, { nose: [7, 8] }],
    [0, 90, 210, 300],
  );

  it('keeps the frames of the last given milliseconds, both ends included', () => {
    const part = lastPart(track, 210);
    expect([...part.timesMs]).toEqual([90, 210, 300]);
    expect([part.xPx[0], part.yPx[0], part.xPx.length]).toEqual([3, 4, 3 * 33]);
  });

  it('keeps all of a shorter track, and nothing of an empty one', () => {
    expect([...lastPart(track, 1000).timesMs]).toEqual([0, 90, 210, 300]);
    expect(lastPart(smallTrack([]), 1000).timesMs).toHaveLength(0);
  });
});
