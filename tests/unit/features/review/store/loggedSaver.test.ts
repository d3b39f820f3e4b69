import { describe, expect, it } from 'vitest';
import type { RecordingHead } from '#documents/recording/recordingHead';
import { emptyReview } from '#documents/recording/reviewSchema';
import { loggedSaver } from '#features/review/store/loggedSaver';
import { smallRecording } from '../../../../support/smallRecording';

const opened: RecordingHead = { ...smallRecording(), corrections: [], review: emptyReview };
const signed = { by: 'AB', at: '2026-04-05T08:00:00.000Z' };
const limits = (times: number): RecordingHead => ({
  ...opened,
  review: {
    ...emptyReview,
    limitsSet: Array.from({ length: times }, () => ({ limits: opened.limits, ...signed })),
  },
});

function saver() {
  const noted: string[] = [];
  const saved: RecordingHead[] = [];
  const save = loggedSaver(
    (recording) => Promise.resolve(void saved.push(recording)),
    opened,
    (what) => Promise.resolve(void noted.push(what)),
  );
  return { save, noted, saved };
}

describe('loggedSaver(save, opened, note)', () => {
  it('notes nothing of what is not signed, such as a remark', async () => {
    const { save, noted, saved } = saver();
    await save({
      ...opened,
      review: { ...emptyReview, remarks: [{ atMs: null, text: 'Tired.', ...signed }] },
    });
    expect(saved).toHaveLength(1);
    expect(noted).toEqual([]);
  });

  it('notes limits and corrections once, and each time that it is reviewed or no longer is', async () => {
    const { save, noted } = saver();
    await save(limits(1));
    await save(limits(2));
    const correction = { change: { kind: 'working-side' as const, side: 'left' as const }, ...signed };
    const corrected = { ...limits(2), corrections: [correction] };
    await save(corrected);
    const reviewed = { ...corrected, review: { ...corrected.review!, reviewed: signed } };
    await save(reviewed);
    await save(corrected);
    await save(reviewed);
    expect(noted).toEqual(['limits', 'corrections', 'review', 'review-withdrawn', 'review']);
  });

  it('notes nothing that could not be saved', async () => {
    const noted: string[] = [];
    const save = loggedSaver(
      () => Promise.reject(new Error('full')),
      opened,
      (what) => Promise.resolve(void noted.push(what)),
    );
    await expect(save(limits(1))).rejects.toThrow('full');
    expect(noted).toEqual([]);
  });
});
