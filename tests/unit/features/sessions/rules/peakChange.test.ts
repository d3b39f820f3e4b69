import { describe, expect, it } from 'vitest';
import { defaultLimits } from '#core/protocol/limits';
import type { SetPeak } from '#core/scoring/findSetPeak';
import { notedConditions } from '#documents/plan/notedConditions';
import { changeSentence } from '#features/sessions/rules/changeWords';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { changeSinceLast, peakChange } from '#features/sessions/rules/peakChange';
import { listedRecording, listedSession, readingOf } from '../../../../support/listedSession';
import { smallItem } from '../../../../support/smallPlan';

const peak = (meanDeg: number, semDeg = 1): SetPeak => ({ meanDeg, semDeg, count: 8 });

describe('peakChange(earlier, later, earlierAt)', () => {
  it('is never found below the usual difference between days: 8.34 from a SEM of 3.01 degrees', () => {
    // Munro 2012 gives a smallest detectable difference of 7.54 to 8.93 for SEM of 2.72 to 3.01.
    const { detectableDeg } = peakChange(peak(12), peak(4), '');
    expect(detectableDeg).toBeCloseTo(8.34, 2);
    expect(peakChange(peak(12), peak(4), '').verdict).toBe('within-error');
    expect(peakChange(peak(13), peak(4), '')).toMatchObject({ verdict: 'lower', difference: -9 });
    expect(peakChange(peak(4), peak(13), '').verdict).toBe('higher');
  });

  it('takes more where the sets themselves are less sure: 1.96 times the hypotenuse of their errors', () => {
    const { detectableDeg, verdict } = peakChange(peak(13, 3), peak(4, 4), '');
    expect(detectableDeg).toBeCloseTo(1.96 * 5, 9);
    expect(verdict).toBe('within-error');
  });

  it('is put in a sentence that gives the error', () => {
    expect(changeSentence(peakChange(peak(14), peak(3), ''), '5 Apr')).toBe(
      'Mean peak 3° inward, 14° inward on 5 Apr: less inward by more than measurement error (8.4°).',
    );
    expect(changeSentence(peakChange(peak(9), peak(3), ''), '5 Apr')).toBe(
      'Mean peak 3° inward, 9° inward on 5 Apr: no change beyond measurement error (8.4°).',
    );
    expect(changeSentence(peakChange(peak(1), peak(12), ''), '5 Apr')).toContain('more inward');
  });
});

describe('changeSinceLast(sessions, session, set)', () => {
  const reading = (meanDeg: number | null) => {
    const read = readingOf(['in', 'in', 'in']);
    return {
      ...read,
      result: { ...read.result, peak: meanDeg === null ? null : peak(meanDeg) },
      course: { points: [], limits: defaultLimits, bendsFilmed: true, measuringVersion: 7 },
    };
  };
  const sessionOn = (day: string, meanDeg: number | null, change: Partial<ListedSession> = {}) =>
    listedSession({
      id: day,
      startedAt: `${day}T08:00:00.000Z`,
      sets: [listedRecording({ reading: reading(meanDeg) })],
      ...change,
    });
  const now = sessionOn('2026-05-01', 4);
  const since = (...others: ListedSession[]) => changeSinceLast([...others, now], now, now.sets[0]!);

  it('compares the same patient, task and side, newest first, and skips what was not measured', () => {
    const others = [
      sessionOn('2026-04-01', 20),
      sessionOn('2026-04-10', 15),
      sessionOn('2026-04-20', null),
      sessionOn('2026-04-25', 30, { patient: 'invented-otter' }),
      sessionOn('2026-04-26', 40, {
        sets: [listedRecording({ line: { side: 'left' }, reading: reading(40) })],
      }),
      sessionOn('2026-05-09', 50),
    ];
    expect(since(...others)).toMatchObject({
      kind: 'compared',
      change: { earlierDeg: 15, laterDeg: 4, earlierAt: '2026-04-10T08:00:00.000Z' },
    });
  });

  it('holds the second set against the second set', () => {
    const sets = [15, 25].map((meanDeg, index) =>
      listedRecording({ line: { number: index + 1 }, reading: reading(meanDeg) }),
    );
    const later = listedRecording({ line: { number: 2 }, reading: reading(4) });
    expect(changeSinceLast([sessionOn('2026-04-10', 0, { sets })], now, later)).toMatchObject({
      change: { earlierDeg: 25 },
    });
  });

  it('does not compare what was done otherwise, and says what differs', () => {
    const asked = notedConditions(smallItem({ seatHeightCm: 50 }), null);
    const before = sessionOn('2026-04-10', 15, {
      sets: [listedRecording({ reading: reading(15), asked })],
    });
    const lower = listedRecording({ reading: reading(4), asked: { ...asked, seatHeightCm: 46 } });
    expect(changeSinceLast([before], now, lower)).toMatchObject({
      kind: 'unlike',
      comparison: { differences: [{ condition: 'seatHeightCm', earlier: 50, later: 46 }] },
      earlierAt: before.startedAt,
    });
  });

  it('says nothing of a first session, and nothing of nobody', () => {
    expect(since()).toBeNull();
    const nobody = { ...now, patient: '' };
    expect(changeSinceLast([sessionOn('2026-04-10', 9, { patient: '' })], nobody, now.sets[0]!)).toBeNull();
  });
});
