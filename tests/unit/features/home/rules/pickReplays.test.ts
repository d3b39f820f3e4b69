import { describe, expect, it } from 'vitest';
import type { Verdict } from '#core/scoring/verdict';
import { pickReplays } from '#features/home/rules/pickReplays';
import { kneeJudged } from '../../../../support/kneeJudgement';

const repetition = (startMs: number, chanceInLine: number | null, verdict: Verdict = 'cant-tell') => ({
  events: { startMs, endMs: startMs + 3000 },
  judgement: {
    ...kneeJudged({ verdict, worst: { value: 5, band: 2, sample: 7, timeMs: startMs + 1200 } }),
    chanceInLine,
  },
});

describe('pickReplays(sets)', () => {
  it('takes the likeliest and the least likely to have been in line, from whatever set', () => {
    const first = { recordingId: 'a', repetitions: [repetition(1000, 0.6), repetition(5000, 0.02)] };
    const second = { recordingId: 'b', repetitions: [repetition(2000, 0.5), repetition(9000, 0.99)] };
    expect(pickReplays([first, second])).toMatchObject([
      { kind: 'best', recordingId: 'b', place: 2, fromMs: 9000, toMs: 12_000, stillMs: 10_200 },
      { kind: 'edge', recordingId: 'a', place: 2, fromMs: 5000, toMs: 8000, stillMs: 6200 },
    ]);
  });

  it('keeps the place of a repetition among those that could not be measured', () => {
    const repetitions = [repetition(0, null, 'not-measured'), repetition(4000, 0.9)];
    expect(pickReplays([{ recordingId: 'a', repetitions }])).toMatchObject([{ kind: 'best', place: 2 }]);
  });

  it('takes none where none was measured', () => {
    expect(pickReplays([])).toEqual([]);
    expect(pickReplays([{ recordingId: 'a', repetitions: [repetition(0, null, 'not-measured')] }])).toEqual(
      [],
    );
  });
});
