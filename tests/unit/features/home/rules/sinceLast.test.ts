import { describe, expect, it } from 'vitest';
import { notedConditions } from '#documents/plan/notedConditions';
import { parseRecording } from '#documents/recording/parseRecording';
import { sinceLast, type MeasuredSet } from '#features/home/rules/sinceLast';
import { recordingText } from '../../../../support/fakeAdapters';
import { smallItem } from '../../../../support/smallPlan';
import { smallSession } from '../../../../support/smallSession';

const recording = parseRecording(recordingText);
const set = { ...smallSession().sets[0]!, cutShort: null };

/** The made-up recording with peaks of 0 +-2 degrees more or less, their errors their own and small. */
function measured(meanDeg: number, change: Partial<MeasuredSet['set']> = {}, ownBand = 0.5): MeasuredSet {
  const { repetitions } = recording.derived;
  const shifted = repetitions.map((repetition, index) => {
    const range = repetition.ranges['knee-angle'];
    const max = { ...range.max!, value: meanDeg + 2 * (index % 3) - 2, band: ownBand, ownBand };
    return { ...repetition, ranges: { ...repetition.ranges, 'knee-angle': { ...range, max } } };
  });
  return {
    set: { ...set, ...change },
    recording: { ...recording, derived: { ...recording.derived, repetitions: shifted } },
  };
}

describe('sinceLast(earlier, later)', () => {
  it('is nothing within the usual difference between two days: 8.34 degrees from a SEM of 3.01', () => {
    // Munro 2012 gives a smallest detectable difference of 7.54 to 8.93 for SEM of 2.72 to 3.01.
    expect(sinceLast(measured(14), measured(5.7))).toBeNull();
    expect(sinceLast(measured(14), measured(5.6))).toBe('less-inward');
    expect(sinceLast(measured(5.6), measured(14))).toBe('more-inward');
  });

  it('is nothing where the sets were not alike', () => {
    const last = measured(20);
    expect(sinceLast(last, measured(2))).toBe('less-inward');
    expect(sinceLast(last, measured(2, { side: 'left' }))).toBeNull();
    const conditions = notedConditions(smallItem({ seatHeightCm: 46 }), null);
    expect(sinceLast(last, measured(2, { conditions }))).toBeNull();
    const seated = measured(20, { conditions });
    expect(sinceLast(seated, measured(2, { conditions }))).toBe('less-inward');
    // A centimetre is what a tape measure is read to.
    expect(
      sinceLast(seated, measured(2, { conditions: { ...conditions, seatHeightCm: 47 } })),
    ).not.toBeNull();
    expect(sinceLast(seated, measured(2, { conditions: { ...conditions, seatHeightCm: 50 } }))).toBeNull();
    const now = measured(2);
    const derived = { ...now.recording.derived, measuringVersion: 1 };
    expect(sinceLast(last, { ...now, recording: { ...now.recording, derived } })).toBeNull();
  });

  it('is nothing where too few repetitions were measured', () => {
    const now = measured(2);
    const derived = { ...now.recording.derived, repetitions: now.recording.derived.repetitions.slice(0, 2) };
    expect(sinceLast(measured(20), { ...now, recording: { ...now.recording, derived } })).toBeNull();
  });
});
