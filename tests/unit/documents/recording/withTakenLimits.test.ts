import { describe, expect, it } from 'vitest';
import { emptyReview, type LimitsSet } from '#documents/recording/reviewSchema';
import { withTakenLimits } from '#documents/recording/withTakenLimits';
import { smallRecording } from '../../../support/smallRecording';

const taken: LimitsSet = {
  limits: { 'knee-angle': { least: -14, most: 6 } },
  by: 'T2',
  at: '2024-03-02T08:00:00.000Z',
  takenFrom: '2024-03-01T07:00:00.000Z',
};
const recording = smallRecording();

describe('withTakenLimits(recording, taken)', () => {
  it('gives limits that were set elsewhere, signed and dated as there', () => {
    const judged = withTakenLimits(recording, taken);
    expect(judged.limits).toEqual(taken.limits);
    expect(judged.review).toEqual({ ...emptyReview, limitsSet: [taken] });
    expect(judged.observed).toBe(recording.observed);
  });

  it('keeps existing remarks', () => {
    const remarks = [{ atMs: null, text: 'Tired.', by: 'T1', at: '2024-03-06T07:00:00.000Z' }];
    const judged = withTakenLimits({ ...recording, review: { ...emptyReview, remarks } }, taken);
    expect(judged.review).toMatchObject({ remarks, limitsSet: [taken] });
  });

  it('leaves a recording unchanged that was reviewed, has its own limits, or has none to take', () => {
    const at = '2024-03-06T07:00:00.000Z';
    const reviewed = { ...recording, review: { ...emptyReview, reviewed: { by: 'T1', at } } };
    const own = { limits: { 'knee-angle': { least: -9, most: 9 } }, by: 'T1', at };
    const set = { ...recording, review: { ...emptyReview, limitsSet: [own] } };
    expect(withTakenLimits(reviewed, taken)).toBe(reviewed);
    expect(withTakenLimits(set, taken)).toBe(set);
    expect(withTakenLimits(recording, null)).toBe(recording);
  });
});
