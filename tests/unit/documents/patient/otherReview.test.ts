import { describe, expect, it } from 'vitest';
import { notIn, readOtherReview, reviewBeside } from '#documents/patient/otherReview';
import { emptyReview } from '#documents/recording/reviewSchema';
import { smallRecording } from '../../../support/smallRecording';

const recording = smallRecording();
const at = '2026-04-06T07:08:09.000Z';
const excluded = (atMs: number, reason = 'Lost balance') => ({
  change: { kind: 'exclude' as const, atMs, reason },
  by: 'AB',
  at,
});
const withWork = (
  corrections: ReturnType<typeof excluded>[],
  cues: { atMs: number; text: string }[] = [],
) => ({
  ...recording,
  corrections,
  review: { ...emptyReview, cues },
});

describe('reviewBeside(other, counts)', () => {
  it('has corrections and cues with what set they are of, as one text whatever the order of fields', () => {
    const other = withWork([excluded(2000)], [{ atMs: 2000, text: 'Knee out' }]);
    const beside = reviewBeside(other, recording)!;
    expect(beside).toMatchObject({ kind: 'review', of: recording.id });
    expect(beside.text).toBe(
      '{"corrections":[{"at":"2026-04-06T07:08:09.000Z","by":"AB","change":{"atMs":2000,"kind":"exclude",' +
        '"reason":"Lost balance"}}],"createdAt":"2024-03-05T07:08:09.010Z","cues":[{"atMs":2000,"text":"Knee out"}],' +
        '"side":"right","task":"split-stance-sit-to-stand"}',
    );
    const change = { reason: 'Lost balance', atMs: 2000, kind: 'exclude' as const };
    const reordered = { ...other, corrections: [{ at, by: 'AB', change }] };
    expect(reviewBeside(reordered, recording)).toEqual(beside);
    expect(readOtherReview(beside.text)).toMatchObject({ corrections: other.corrections, side: 'right' });
  });

  it('is null where the one that counts has all of it, and where nothing was corrected', () => {
    const counts = withWork([excluded(2000), excluded(5000)], [{ atMs: 2000, text: 'Knee out' }]);
    expect(reviewBeside(withWork([excluded(5000)]), counts)).toBeNull();
    expect(reviewBeside(recording, counts)).toBeNull();
    expect(reviewBeside({ ...counts, note: 'Another note.' }, counts)).toBeNull();
    expect(reviewBeside(withWork([excluded(5000, 'Stopped')]), counts)).not.toBeNull();
    expect(reviewBeside(withWork([], [{ atMs: 2000, text: 'Slower' }]), counts)).not.toBeNull();
  });

  it('is null for a text that would not fit in the record', () => {
    const many = Array.from({ length: 2000 }, (_, index) => excluded(index, '"'.repeat(300)));
    expect(reviewBeside(withWork(many), recording)).toBeNull();
    expect(reviewBeside(withWork(many.slice(0, 1000)), recording)).not.toBeNull();
  });
});

describe('readOtherReview(text)', () => {
  it.each(['', '{}', '{"corrections":[]}'])('is null for what can’t be read (%#)', (text) => {
    expect(readOtherReview(text)).toBeNull();
  });
});

describe('notIn(entries, others)', () => {
  it('leaves out what is there, whatever the order of fields', () => {
    const entries = [
      { a: 1, b: 2 },
      { a: 1, b: 3 },
    ];
    expect(notIn(entries, [{ b: 2, a: 1 }])).toEqual([{ a: 1, b: 3 }]);
  });
});
