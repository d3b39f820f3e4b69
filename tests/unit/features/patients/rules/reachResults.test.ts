import { describe, expect, it } from 'vitest';
import type { AssessmentId } from '#core/assessments/assessments';
import type { AssessmentRecord } from '#documents/patient/patientDocument';
import { assessmentCourses } from '#features/patients/rules/assessmentResults';
import { reachResults, shareOfLeg } from '#features/patients/rules/reachResults';

let ids = 0;
function entry(test: AssessmentId, day: number, left: number[], right: number[]): AssessmentRecord {
  return {
    id: `${String(++ids).padStart(8, '0')}-93ff-4a8e-8f8d-5a6c1b2e7d10`,
    ...{
      at: `2026-04-${String(day).padStart(2, '0')}T10:00:00.000Z`,
      by: 'AB',
      test,
      tries: { left, right },
    },
    ...{ asDone: 'bare feet', worstPain: null, remark: '', withdrawn: null },
  };
}
const resultsOf = (...records: AssessmentRecord[]) => reachResults(assessmentCourses(records, null));
const directions = (day: number) => [
  entry('reach-front', day, [58, 60, 59], [55]),
  entry('reach-back-inward', day, [80, 78], [75]),
  entry('reach-back-outward', day, [88], []),
];

describe('reachResults(courses)', () => {
  it('takes the best of each direction, in percent of the leg', () => {
    const found = resultsOf(entry('leg-length', 2, [79, 81], [80]), ...directions(2))!;
    expect(found).toMatchObject({ by: 'AB', asDone: 'bare feet' });
    // The leg is 80 cm, the mean of two: 60 / 80 = 75 %, 80 / 80 = 100 %, 88 / 80 = 110 %; their mean 95 %.
    expect(found.legs.left).toEqual({
      legCm: 80,
      reachCm: [60, 80, 88],
      ofLeg: { frontPct: 75, backInwardPct: 100, backOutwardPct: 110, compositePct: 95 },
    });
    expect(found.legs.right).toEqual({ legCm: 80, reachCm: [55, 75, null], ofLeg: null });
  });

  it('puts no directions of several days together, but a length that was measured before', () => {
    const length = entry('leg-length', 1, [80], [80]);
    const later = entry('reach-front', 9, [64], [62]);
    expect(resultsOf(length, ...directions(2), later)!.legs.left).toEqual({
      legCm: 80,
      reachCm: [64, null, null],
      ofLeg: null,
    });
    expect(resultsOf(length, ...directions(2))!.legs.left.ofLeg?.compositePct).toBe(95);
  });

  it('is null without a reach, and tells no percent without a length', () => {
    expect(resultsOf(entry('leg-length', 1, [80], [80]))).toBeNull();
    expect(resultsOf(...directions(2))!.legs.left).toMatchObject({ legCm: null, ofLeg: null });
    expect(shareOfLeg([60, 80, 88], 0)).toBeNull();
  });
});
