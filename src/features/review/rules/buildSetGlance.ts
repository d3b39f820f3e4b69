import { mean } from 'd3-array';
import type { CountInLine } from '#core/chance/countInLine';
import { longestGoodRun } from '#core/chance/longestGoodRun';
import { findTask } from '#core/exercises/exercises';
import type { Measurement } from '#core/measurement/measurement';
import { depth } from '#core/measures/depth';
import type { Limits } from '#core/protocol/limits';
import { countSet } from '#core/scoring/countSet';
import { findSetPeak, type SetPeak } from '#core/scoring/findSetPeak';
import { judgementOf, type Judgement } from '#core/scoring/judge';
import { spreadBetween, type Spread } from '#core/statistics/spreadBetween';
import { withinSetTrend, type Trend } from '#core/statistics/withinSetTrend';
import { tempo, type TempoPart } from '#words/tempo';
import { countedRepetitions } from './countedRepetitions';

/** Summary of a set, for a glance of a few seconds. */
export interface SetGlance {
  /** Complete repetitions that count. */
  done: number;
  excluded: number;
  /** How many were in line; null where none was measured. */
  inLine: CountInLine | null;
  /** Repetitions in the longest run that was in line as far as can be told. */
  goodRun: number;
  /** Mean of the largest inward angles; null with too few. */
  peak: SetPeak | null;
  /** Usual length of each part, s; null where none was seen. */
  tempo: TempoPart[];
  /** How far the hip drops, share of leg length; null below two repetitions. */
  depth: Spread | null;
  /** Trend of the largest inward angle from one repetition to the next, degrees; null below three repetitions. */
  trend: Trend | null;
}

export function buildSetGlance(
  measurement: Measurement,
  judgements: readonly Judgement[],
  excluded: readonly (string | null)[],
  limits: Limits,
): SetGlance {
  const counted = countedRepetitions(measurement, judgements, excluded);
  const repetitions = counted.map(({ repetition }) => repetition);
  const { shape } = findTask(measurement.setup.task);
  const tempos = repetitions.map((repetition) => tempo(repetition, shape));
  const isMeasured = ({ judgement }: (typeof counted)[number]) =>
    judgementOf(judgement, 'knee-angle').verdict !== 'not-measured';
  return {
    done: counted.length,
    excluded: excluded.filter((reason) => reason !== null).length,
    inLine: countSet(
      counted.map(({ repetition: { ranges }, judgement }) => ({ ranges, judgement })),
      limits,
    ),
    goodRun: longestGoodRun(counted.map(({ judgement }) => judgement.chanceInLine)),
    peak: findSetPeak(counted.filter(isMeasured).map(({ repetition }) => repetition)),
    tempo: (tempos[0] ?? []).map(({ name }, part) => ({
      name,
      seconds: mean(tempos, (parts) => parts[part]?.seconds ?? undefined) ?? null,
    })),
    depth: spreadBetween(repetitions.flatMap(({ ranges }) => depth.peak(ranges.depth)?.value ?? [])),
    trend: withinSetTrend(
      counted.map((one) =>
        isMeasured(one) ? (one.repetition.ranges['knee-angle'].max?.value ?? null) : null,
      ),
    ),
  };
}
