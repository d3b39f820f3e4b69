import { describe, expect, it } from 'vitest';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { compareClip } from '#tools/validation/compareClip';
import { clipTruth, foundRepetition, notMeasured, trueRepetition } from './handMade';

function derived(
  repetitions: RecordingDocument['derived']['repetitions'],
  values: (number | null)[] = new Array<number>(300).fill(1),
): RecordingDocument['derived'] {
  const curve = { values, missing: [] };
  return {
    measuringVersion: 1,
    rateHz: 30,
    startMs: 0,
    legLengthPx: 400,
    view: null,
    curves: { 'knee-angle': curve, 'knee-off-line': curve },
    repetitions,
  };
}

describe('compareClip(truth, derived)', () => {
  const truth = clipTruth([trueRepetition(0, 1), trueRepetition(1, 6, { measuredPeakFppaFrontal: 4 })]);

  it('sets peaks, verdicts and times side by side', () => {
    const { repetitions, repsFound, repsTrue } = compareClip(truth, derived([foundRepetition(1, 1.7, 3.9)]));
    expect([repsFound, repsTrue]).toEqual([1, 2]);
    expect(repetitions[0]).toMatchObject({
      index: 0,
      truePeakDeg: 12,
      measuredPeakDeg: 10.5,
      reason: null,
      bandDeg: 4,
      trueVerdict: 'out', // 12 is 2 beyond the limit of 10
      verdict: 'cant-tell',
    });
    // Phi(0.5 / (4 / 1.645)) = Phi(0.2056); Abramowitz & Stegun, table 26.1: .5793 at .20, .5832 at .21.
    expect(repetitions[0]!.chanceBeyond).toBeCloseTo(0.5815, 3);
    // Seat-off found at 1.7 s, true 1.5 s; seat contact at 3.9 s, true 4 s.
    expect(repetitions[0]!.timingErrorsS.liftOff).toBeCloseTo(0.2, 9);
    expect(repetitions[0]!.timingErrorsS.touchDown).toBeCloseTo(-0.1, 9);
    expect(repetitions[0]!.timingErrorsS).not.toHaveProperty('bottom');
  });

  it("keeps a repetition that was not found, with a reason and the true peak's verdict", () => {
    const { repetitions } = compareClip(truth, derived([foundRepetition(1, 1.7, 3.9)]));
    expect(repetitions[1]).toMatchObject({
      index: 1,
      truePeakDeg: 4,
      measuredPeakDeg: null,
      reason: 'not-found',
      chanceBeyond: null,
      trueVerdict: 'in',
      verdict: 'not-measured',
    });
  });

  it('counts complete repetitions only', () => {
    const partial = foundRepetition(2, 6.7, 8.8, { completeness: 'partial' });
    const { repsFound, repetitions } = compareClip(truth, derived([foundRepetition(1, 1.7, 3.9), partial]));
    expect(repsFound).toBe(1);
    expect(repetitions[1]!.reason).toBe('not-found');
  });

  it('gives no number where the tool gives none', () => {
    const hidden = foundRepetition(1, 1.7, 3.9, { judgement: notMeasured });
    const { repetitions } = compareClip(truth, derived([hidden]));
    expect(repetitions[0]).toMatchObject({
      measuredPeakDeg: null,
      reason: 'out-of-picture',
      chanceBeyond: null,
    });
  });

  it('reads the true picture peak over the measured moments only', () => {
    const frames = [14, 7, 8, 13].map((fppaImage, i) => ({ t: 2 + i / 30, side: { R: { fppaImage } } }));
    const values = new Array<number | null>(300).fill(5);
    values[60] = null; // at 2 s, where the truth is 14
    values[63] = null; // where it is 13
    const { repetitions } = compareClip(
      clipTruth([trueRepetition(0, 1)], frames),
      derived([foundRepetition(1, 1.7, 3.9)], values),
    );
    expect(repetitions[0]!.truePicturePeakDeg).toBe(8);
  });

  it("reads the network's own picture peak over the measured moments only", () => {
    const values = new Array<number | null>(300).fill(5);
    values[70] = null;
    const pictureDeg = new Array<number | null>(300).fill(3);
    pictureDeg[70] = 15; // not measured there
    pictureDeg[80] = 11;
    pictureDeg[200] = 20; // outside the repetition
    const { repetitions } = compareClip(truth, derived([foundRepetition(1, 1.7, 3.9)], values), pictureDeg);
    expect(repetitions[0]!.readPicturePeakDeg).toBe(11);
  });

  it('counts nothing as found where a clip could not be measured', () => {
    const compared = compareClip(truth, null);
    expect(compared.repsFound).toBe(0);
    expect(compared.repetitions.map(({ reason }) => reason)).toEqual(['not-found', 'not-found']);
  });
});
