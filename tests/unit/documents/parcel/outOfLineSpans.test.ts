import { describe, expect, it } from 'vitest';
import type { Verdict } from '#core/scoring/verdict';
import { coverFor } from '#documents/parcel/coverFor';
import { isOutOfLine, outOfLineSpans } from '#documents/parcel/outOfLineSpans';
import { smallRecording } from '../../../support/smallRecording';

const recording = smallRecording();
type Repetition = (typeof recording.derived.repetitions)[number];
const pattern = recording.derived.repetitions[0]!;

function repetition(startMs: number, endMs: number, verdict: Verdict = 'out'): Repetition {
  return {
    ...pattern,
    events: { ...pattern.events, startMs, endMs },
    judgement: { ...pattern.judgement, verdict },
  };
}

describe('outOfLineSpans(repetitions)', () => {
  it('gives half a second before and after each repetition that went out of line', () => {
    const spans = outOfLineSpans([
      repetition(2000, 4000),
      repetition(5000, 7000, 'in'),
      repetition(7500, 9000, 'cant-tell'),
      repetition(10_000, 12_500),
      repetition(13_000, 14_000, 'not-measured'),
    ]);
    expect(spans).toEqual([
      { fromMs: 1500, toMs: 4500 },
      { fromMs: 9500, toMs: 13_000 },
    ]);
  });

  it('joins those that follow each other closely, and begins no earlier than the video', () => {
    expect(outOfLineSpans([repetition(200, 2000), repetition(2900, 4000), repetition(5001, 6000)])).toEqual([
      { fromMs: 0, toMs: 4500 },
      { fromMs: 4501, toMs: 6500 },
    ]);
  });

  it('leaves out what was excluded, and is empty where nothing went out of line', () => {
    const excluded = { ...repetition(2000, 4000), excluded: 'Slipped.' };
    expect(isOutOfLine(excluded)).toBe(false);
    expect(outOfLineSpans([excluded, repetition(5000, 6000, 'in')])).toEqual([]);
  });
});

describe('coverFor(part, recording)', () => {
  const withRepetitions = (...repetitions: Repetition[]) => ({
    ...recording,
    derived: { ...recording.derived, repetitions },
  });

  it('covers all of what is outside the repetitions out of line, and nothing of them', () => {
    const cover = coverFor('out-of-line', withRepetitions(repetition(2000, 4000), repetition(6000, 7000)))!;
    for (const timeMs of [1500, 3000, 4500, 5500, 7500]) expect(cover(timeMs)).toBe(0);
    for (const timeMs of [0, 1499, 4501, 5499, 7501]) expect(cover(timeMs)).toBe(Infinity);
  });

  it('sends no video of a set in which nothing went out of line', () => {
    expect(coverFor('out-of-line', withRepetitions(repetition(2000, 4000, 'in')))).toBeNull();
  });

  it('covers the head of the person in the recording’s own pictures, at every time', () => {
    const cover = coverFor('without-head', recording)!;
    const { timesMs, yPx, score } = recording.observed;
    for (const [frame, timeMs] of timesMs.entries()) {
      const own = (values: readonly number[]) => values.slice(33 * frame, 33 * frame + 11);
      if (own(score).some((value) => value > 0)) expect(cover(timeMs)).toBeGreaterThan(Math.max(...own(yPx)));
      else expect(cover(timeMs)).toBe(Infinity);
    }
  });
});
