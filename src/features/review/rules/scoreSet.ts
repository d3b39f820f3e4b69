import { sum } from 'd3-array';
import type { Measurement } from '#core/measurement/measurement';
import type { Limits } from '#core/protocol/limits';
import { countWithin } from '#core/scoring/countWithin';
import { judgementOf } from '#core/scoring/judge';
import type { CountedRepetition } from './countedRepetitions';

export interface SetScore {
  /** Share of the measured loaded time within the limits, 0 to 100 %. */
  pct: number;
  /** What it would be if every angle were off by its band, to the worse and to the better. */
  lowPct: number;
  highPct: number;
  /** Repetitions that it rests on. */
  count: number;
}

/**
 * Alignment score of a set with its band: the limits moved in and out by each repetition's own error band.
 *
 * @returns  null where no counted repetition was measured
 */
export function scoreSet(
  { curves }: Pick<Measurement, 'curves'>,
  counted: readonly CountedRepetition[],
  limits: Limits,
): SetScore | null {
  const judged = counted.flatMap(({ repetition, judgement }) => {
    const { extreme } = judgementOf(judgement, 'knee-angle');
    return extreme === null ? [] : [{ repetition, bandDeg: extreme.band }];
  });
  const { least, most } = limits['knee-angle'];
  const share = (bands: number) => {
    const counts = judged.map(({ repetition, bandDeg }) =>
      countWithin(repetition, curves['knee-angle'], {
        least: least - bands * bandDeg,
        most: most + bands * bandDeg,
      }),
    );
    return (100 * sum(counts, ({ within }) => within)) / sum(counts, ({ measured }) => measured);
  };
  if (judged.length === 0) return null;
  return { pct: share(0), lowPct: share(-1), highPct: share(1), count: judged.length };
}
