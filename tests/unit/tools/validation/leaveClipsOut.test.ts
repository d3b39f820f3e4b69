import { describe, expect, it } from 'vitest';
import type { YawReading } from '#core/view/closerBand';
import { countHeld, leaveClipsOut } from '#tools/validation/leaveClipsOut';
import { comparedRepetition } from './handMade';

/** A clip whose peaks are off by these shares of their band. */
function clip(yawReading: YawReading | null, ...ratios: number[]) {
  const repetitions = ratios.map((ratio) =>
    comparedRepetition({ truePeakDeg: 10, measuredPeakDeg: 10 + 4 * ratio, bandDeg: 4 }),
  );
  return { yawReading, repetitions };
}

/** Ten ratios: the widest of nine to eighteen others is what split conformal takes for nine of ten. */
const even = [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1];

describe('leaveClipsOut(clips)', () => {
  it('fits the width on all other clips and counts the peaks within', () => {
    // Without the second, ten ratios up to 1: 11 x 0.9 = 9.9, the tenth. Without the first, 0.5 of nine alike.
    const clips = [clip('firm', ...even), clip('firm', ...new Array<number>(9).fill(0.5))];
    expect(leaveClipsOut(clips)).toEqual([
      { clip: clips[0], factor: 0.5, held: 5, repetitions: 10 },
      { clip: clips[1], factor: 1, held: 9, repetitions: 9 },
    ]);
  });

  it('never lets a clip widen its own band', () => {
    const clips = [clip('firm', ...even), clip('firm', ...even), clip('firm', 3, 3, 3)];
    expect(leaveClipsOut(clips)[2]).toMatchObject({ factor: 1, held: 0, repetitions: 3 });
  });

  it('fits only on clips whose yaw was told alike, and leaves out what has too few others', () => {
    const clips = [clip('firm', ...even), clip('firm', 0.2), clip('loose', ...even, 2), clip(null, 1)];
    expect(leaveClipsOut(clips)).toEqual([{ clip: clips[1], factor: 1, held: 1, repetitions: 1 }]);
  });

  it('leaves out clips without a band', () => {
    expect(leaveClipsOut([clip('firm', ...even), clip('firm')])).toEqual([]);
  });
});

describe('countHeld(clips)', () => {
  it('adds clips up, with an interval', () => {
    const counted = countHeld([
      { clip: null, factor: 1, held: 50, repetitions: 60 },
      { clip: null, factor: 0.8, held: 31, repetitions: 40 },
    ]);
    expect(counted).toMatchObject({ clips: 2, repetitions: 100, held: 81 });
    // Wilson 81 of 100: (81.0 + 1.9208) / 103.8416 -+ 1.96 sqrt(.1539 x 100 + .9604) / 103.8416 = .7222, .8749.
    expect(counted.coverage!.share).toBe(0.81);
    expect(counted.coverage!.low).toBeCloseTo(0.7222, 3);
    expect(counted.coverage!.high).toBeCloseTo(0.8749, 3);
  });

  it('has no share of nothing', () => {
    expect(countHeld([])).toEqual({ clips: 0, repetitions: 0, held: 0, coverage: null });
  });
});
