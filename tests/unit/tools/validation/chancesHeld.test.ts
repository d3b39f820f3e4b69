import { describe, expect, it } from 'vitest';
import { chancesHeld } from '#tools/validation/chancesHeld';
import type { RepetitionComparison } from '#tools/validation/compareClip';

const clipOf = (measuredPeakDeg: number | null, bandDeg: number | null, truePeakDeg: number, factor = 1) => ({
  clip: { repetitions: [{ measuredPeakDeg, bandDeg, truePeakDeg } as RepetitionComparison] },
  factor,
  held: 1,
  repetitions: 1,
});

const counts = (clips: Parameters<typeof chancesHeld>[0]) =>
  chancesHeld(clips).map(({ comparisons, right }) => [comparisons, right]);

describe('how often chances hold', () => {
  it('counts each limit from 4 to 18 degrees once, by the chance of its likelier side', () => {
    // The standard deviation is 1.645 / 1.645 = 1 degree. At limits of 11, 10 and 9 degrees the chances are
    // Phi(0.5) = 0.69, again 0.69, and Phi(1.5) = 0.93, and so on outwards: 0.93, 0.994 twice, the rest above.
    expect(counts([clipOf(10.5, 1.645, 10.7)])).toEqual([
      [0, null],
      [2, 1],
      [0, null],
      [0, null],
      [2, 1],
      [0, null],
      [11, 1],
    ]);
  });

  it('is wrong between the measured and the true peak', () => {
    // Of the limits 10 and 11, 10 is said to be passed and is not.
    expect(counts([clipOf(10.5, 1.645, 9.9)])[1]).toEqual([2, 0.5]);
  });

  it('widens the band by the factor that was fitted without the clip', () => {
    // 2 degrees: Phi(0.25) = 0.599 at 10 and 11.
    expect(counts([clipOf(10.5, 1.645, 10.7, 2)])[0]).toEqual([2, 1]);
  });

  it('leaves out what was not measured', () => {
    expect(counts([clipOf(null, null, 10)]).every(([comparisons]) => comparisons === 0)).toBe(true);
  });
});
