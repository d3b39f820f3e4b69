import { describe, expect, it } from 'vitest';
import type { Direction } from '#core/scoring/deciding';
import type { Verdict } from '#core/scoring/verdict';
import { replaySentence, replayTitle } from '#features/home/screens/replayWords';
import { kneeJudged } from '../../../../support/kneeJudgement';

const shown = (kind: 'best' | 'edge', verdict: Verdict, direction: Direction = 'inward') => ({
  kind,
  place: 3,
  judgement: kneeJudged({ verdict, direction, worst: { value: 5, band: 2, sample: 7, timeMs: 1200 } }),
});

describe('replayTitle(replay)', () => {
  it('calls nothing to be practised that may have been in line', () => {
    expect(replayTitle(shown('best', 'out'))).toBe('Your best one');
    expect(replayTitle(shown('edge', 'probably-out'))).toBe('One to practise');
    for (const verdict of ['cant-tell', 'probably-in', 'in'] as const)
      expect(replayTitle(shown('edge', verdict))).toBe('Nearest to the edge');
  });
});

describe('replaySentence(replay)', () => {
  it('is one plain sentence or two about what there is to see', () => {
    expect(replaySentence(shown('best', 'in'))).toBe('In the third repetition you stayed in the lane.');
    expect(replaySentence(shown('best', 'out'))).toBe(
      'In the third repetition you came closest to staying in the lane.',
    );
    expect(replaySentence(shown('edge', 'out'))).toBe(
      'In the third repetition your knee went inward, towards the other knee.',
    );
    expect(replaySentence(shown('edge', 'out', 'outward'))).toMatch(/outward, away from the other knee\.$/);
    expect(replaySentence(shown('edge', 'cant-tell'))).toBe(
      'The third repetition came nearest to the edge. It is too close to say more.',
    );
    expect(replaySentence(shown('edge', 'in'))).toMatch(/^The third .* stayed in the lane\.$/);
  });
});
