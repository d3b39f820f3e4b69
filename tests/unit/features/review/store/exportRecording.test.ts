import { describe, expect, it } from 'vitest';
import { defaultLimits, withLimit } from '#core/protocol/limits';
import { parseRecording } from '#documents/recording/parseRecording';
import { emptyReview } from '#documents/recording/reviewSchema';
import { exportRecording } from '#features/review/store/exportRecording';
import { startEdits } from '#features/review/store/reviewEdits';
import { recordingRecording } from '#shell/tracking/shownRecording';
import { recordingText } from '../../../../support/fakeAdapters';

const id = '5d0e3b1c-2c1f-4c8f-8d1e-9b7a6c5d4e3f';
const createdAt = new Date('2026-03-04T05:06:07.008Z');
const recording = recordingRecording(parseRecording(recordingText), {
  origin: 'session',
  fileName: 'whose.json',
  video: null,
});
const limits = withLimit(defaultLimits, 'knee-angle', 'most', 17);
const blank = { limits, edits: startEdits(), entries: emptyReview };

describe('exportRecording(recording, review, id, createdAt)', () => {
  it('gives a document that reads back, with the limits in force', () => {
    const document = exportRecording(recording, blank, id, createdAt);
    expect(parseRecording(JSON.stringify(document))).toEqual(document);
    expect(document).toMatchObject({ id, createdAt: '2026-03-04T05:06:07.008Z', limits });
    expect(JSON.stringify(document)).not.toContain('whose');
  });

  it('leaves out corrections and a review that hold nothing', () => {
    const document = exportRecording(recording, blank, id, createdAt);
    expect(document).not.toHaveProperty('corrections');
    expect(document).not.toHaveProperty('review');
  });

  it('holds corrections in force, and what the review added', () => {
    const by = { by: 'T1', at: '2026-03-04T05:00:00.000Z' };
    const correction = { change: { kind: 'mirrored' as const, isMirrored: true }, ...by };
    const entries = { ...emptyReview, remarks: [{ atMs: null, text: 'Tired.', ...by }] };
    const edits = startEdits([correction]);
    const document = exportRecording(recording, { limits, edits, entries }, id, createdAt);
    expect(document.corrections).toEqual([correction]);
    expect(document.review).toEqual(entries);
  });
});
