import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CorrectionChange } from '#core/correction/correction';
import { measureCorrected } from '#core/correction/measureCorrected';
import { keypointCount, keypointNames } from '#core/keypoints/keypointNames';
import { measure } from '#core/measurement/measure';
import { filmPerson } from '../../../support/syntheticPerson';

const setup = { task: 'split-stance-sit-to-stand', side: 'right' } as const;
const { track } = filmPerson({
  ...setup,
  repetitions: [{ peakDeg: 3 }, { peakDeg: 12 }, { peakDeg: -6 }],
  camera: { distanceM: 12, focalPx: 6000 },
  rateHz: 25,
});
const plain = measure(track, setup);
const middleMs = (index: number, of = plain) => {
  const { loadedFrom, loadedTo } = of.repetitions[index]!;
  return (of.timesMs[loadedFrom]! + of.timesMs[loadedTo]!) / 2;
};
const corrected = (...changes: CorrectionChange[]) =>
  measureCorrected(
    track,
    setup,
    changes.map((change) => ({ change })),
  );

describe('measureCorrected(track, setup, corrections)', () => {
  it('changes nothing without corrections', () => {
    const { measurement, track: used, isByHand, excluded } = corrected();
    expect(measurement).toEqual(plain);
    expect(used).toBe(track);
    expect(isByHand).toBe(false);
    expect(excluded).toEqual([null, null, null]);
  });

  it('leaves an excluded repetition in its place with its numbers, and names the reason', () => {
    const { measurement, excluded, isByHand } = corrected({
      kind: 'exclude',
      atMs: middleMs(1),
      reason: 'She stumbled.',
    });
    expect(measurement.repetitions).toEqual(plain.repetitions);
    expect(excluded).toEqual([null, 'She stumbled.', null]);
    expect(isByHand).toBe(true);
  });

  it('is the identity for excluding and including again, in any order of repetitions', () => {
    fc.assert(
      fc.property(fc.shuffledSubarray([0, 1, 2], { minLength: 1 }), fc.boolean(), (which, isReversed) => {
        const out = which.map((index): CorrectionChange => ({
          kind: 'exclude',
          atMs: middleMs(index),
          reason: 'x',
        }));
        const back = (isReversed ? which.toReversed() : which).map((index): CorrectionChange => ({
          kind: 'include',
          atMs: middleMs(index),
        }));
        expect(corrected(...out, ...back)).toEqual(corrected());
      }),
      { numRuns: 12 },
    );
  });

  it('splits a repetition in two and joins two into one, numbered anew', () => {
    const cutMs = middleMs(1) + 100;
    const split = corrected({ kind: 'split', atMs: cutMs });
    expect(split.measurement.repetitions.map(({ number }) => number)).toEqual([1, 2, 3, 4]);
    expect(split.handMade).toEqual([false, true, true, false]);
    const [, first, second] = split.measurement.repetitions;
    expect(second!.loadedFrom).toBe(first!.loadedTo + 1);
    expect(Math.abs(split.measurement.timesMs[second!.loadedFrom]! - cutMs)).toBeLessThan(40);
    const joined = corrected(
      { kind: 'split', atMs: cutMs },
      { kind: 'join', atMs: middleMs(1, split.measurement), withMs: middleMs(2, split.measurement) },
    );
    const whole = joined.measurement.repetitions[1]!;
    const { loadedFrom, loadedTo, ranges } = plain.repetitions[1]!;
    expect([whole.loadedFrom, whole.loadedTo]).toEqual([loadedFrom, loadedTo]);
    expect(whole.ranges['knee-angle'].max).toEqual(ranges['knee-angle'].max);
    expect(joined.measurement.repetitions).toHaveLength(3);
  });

  it('moves an edge, keeps it between its neighbours, and takes the values from the new time', () => {
    const { loadedFrom, loadedTo } = plain.repetitions[1]!;
    const toMs = plain.timesMs[loadedTo - 8]!;
    const shorter = corrected({ kind: 'move-edge', atMs: middleMs(1), edge: 'end', toMs });
    expect(shorter.measurement.repetitions[1]).toMatchObject({ loadedFrom, loadedTo: loadedTo - 8 });
    expect(shorter.measurement.repetitions[1]!.events.seatContactMs).toBe(toMs);
    const over = corrected({ kind: 'move-edge', atMs: middleMs(1), edge: 'end', toMs: middleMs(2) });
    expect(over.measurement.repetitions[1]!.loadedTo).toBe(plain.repetitions[2]!.loadedFrom - 1);
    const early = corrected({ kind: 'move-edge', atMs: middleMs(1), edge: 'end', toMs: 0 });
    expect(early.measurement.repetitions[1]!.loadedTo).toBeGreaterThan(loadedFrom);
  });

  it('does nothing where no repetition is meant, never fails, and keeps repetitions apart', () => {
    const endMs = plain.timesMs.at(-1)!;
    const timeMs = fc.double({ min: 0, max: endMs, noNaN: true });
    const change: fc.Arbitrary<CorrectionChange> = fc.oneof(
      fc.record({ kind: fc.constant('split' as const), atMs: timeMs }),
      fc.record({ kind: fc.constant('join' as const), atMs: timeMs, withMs: timeMs }),
      fc.record({
        kind: fc.constant('move-edge' as const),
        atMs: timeMs,
        edge: fc.constantFrom('start' as const, 'end' as const),
        toMs: timeMs,
      }),
      fc.record({ kind: fc.constant('exclude' as const), atMs: timeMs, reason: fc.constant('x') }),
    );
    fc.assert(
      fc.property(fc.array(change, { maxLength: 6 }), (changes) => {
        const { measurement, excluded } = corrected(...changes);
        const { repetitions } = measurement;
        expect(excluded).toHaveLength(repetitions.length);
        repetitions.forEach(({ loadedFrom, loadedTo, number }, index) => {
          expect(number).toBe(index + 1);
          expect(loadedTo).toBeGreaterThan(loadedFrom);
          expect(loadedFrom).toBeGreaterThan(repetitions[index - 1]?.loadedTo ?? -1);
        });
      }),
      { numRuns: 60 },
    );
  });

  it('measures the other leg when the working side is switched, as if it had been set so at first', () => {
    expect(corrected({ kind: 'working-side', side: 'left' }).measurement).toEqual(
      measure(track, { ...setup, side: 'left' }),
    );
    const back = corrected({ kind: 'working-side', side: 'left' }, { kind: 'working-side', side: 'right' });
    expect(back).toEqual(corrected());
  });

  it('reads a mirrored video of the right leg as what it is', () => {
    const flipped = corrected({ kind: 'mirrored', isMirrored: true });
    // A mirrored picture that is mirrored once more is the plain one, whose left leg the network calls right.
    const again = measureCorrected(flipped.track, setup, [
      { change: { kind: 'mirrored', isMirrored: true } },
    ]);
    again.measurement.repetitions.forEach(({ ranges }, index) => {
      expect(ranges['knee-angle'].max!.value).toBeCloseTo(
        plain.repetitions[index]!.ranges['knee-angle'].max!.value,
        2,
      );
    });
    expect(flipped.isMirrored).toBe(true);
  });

  it('moves a joint that was set by hand, with what is measured from it', () => {
    const knee = keypointNames.indexOf('right_knee');
    const sample = plain.repetitions[0]!.ranges['knee-angle'].max!.timeMs;
    const changes = [-300, 0, 300].map((offsetMs): CorrectionChange => {
      const frame = track.timesMs.findIndex((timeMs) => timeMs >= sample + offsetMs);
      const at = frame * keypointCount + knee;
      return {
        kind: 'move-point',
        timeMs: track.timesMs[frame]!,
        point: 'right_knee',
        xNorm: (track.xPx[at]! + 40) / track.widthPx, // The right leg's inside is to the picture's right.
        yNorm: track.yPx[at]! / track.heightPx,
      };
    });
    const moved = corrected(...changes);
    const [before, after] = [plain, moved.measurement].map(
      ({ repetitions }) => repetitions[0]!.ranges['knee-angle'].max!.value,
    );
    expect(after! - before!).toBeGreaterThan(3);
    expect(moved.handMade).toEqual([true, false, false]);
    expect(moved.measurement.repetitions[2]!.ranges['knee-angle'].min!.value).toBeCloseTo(
      plain.repetitions[2]!.ranges['knee-angle'].min!.value,
      0,
    );
  });
});
