import { greatest, mean, median } from 'd3-array';
import type { CountInLine } from '#core/chance/countInLine';
import { longestGoodRun } from '#core/chance/longestGoodRun';
import { findTask } from '#core/exercises/exercises';
import type { Measurement } from '#core/measurement/measurement';
import type { Extreme } from '#core/measurement/measureRange';
import { depth } from '#core/measures/depth';
import { kneeBendDeg } from '#core/measures/kneeBend';
import type { LimitEnd } from '#core/measures/limitEnd';
import type { MeasureId } from '#core/measures/measures';
import type { Limits } from '#core/protocol/limits';
import { countSet } from '#core/scoring/countSet';
import { countWithin } from '#core/scoring/countWithin';
import { decidingMeasure } from '#core/scoring/deciding';
import { judgementOf, type Judgement } from '#core/scoring/judge';
import { beyondShare } from '#core/scoring/judgeMeasure';
import { verdictSide } from '#core/scoring/verdict';
import { spreadBetween, type Spread } from '#core/statistics/spreadBetween';
import { withinSetTrend, type Trend } from '#core/statistics/withinSetTrend';
import { tempo, type TempoPart } from '#words/tempo';
import { countedRepetitions } from './countedRepetitions';

/** Repetitions that were lost in the same way. */
export interface LostGroup {
  measure: MeasureId;
  end: LimitEnd;
  repetitions: { number: number; isProbable: boolean }[];
}

/** Summary of a set, for a glance of a few seconds. */
export interface SetGlance {
  /** Complete repetitions that count. */
  done: number;
  excluded: number;
  /** How many were in line; null where none was measured. */
  inLine: CountInLine | null;
  /** Repetitions of which neither side can be named. */
  notClear: number;
  notMeasured: number;
  /** Those out of line or probably so, by what was lost; the largest group first. */
  lost: LostGroup[];
  /** The knee angle that is closest to its limit, or farthest beyond; null where none was measured. */
  worst: { number: number; extreme: Extreme } | null;
  /** Median size of the peak angles, degrees, 0 or above; null where none was measured. */
  medianDeg: number | null;
  /** Which way all peaks went; null where they went both ways. */
  medianEnd: LimitEnd | null;
  /** Repetitions in the longest run that was in line as far as can be told. */
  goodRun: number;
  /** Usual length of each part, s; null where none was seen. */
  tempo: TempoPart[];
  /** How far the knee is bent at the deepest point, degrees; null below two repetitions. */
  bend: Spread | null;
  /** Trend of the largest inward angle from one repetition to the next, degrees; null below three repetitions. */
  trend: Trend | null;
  /** Share of the measured loaded time with the knee within its limits, 0 to 100 %; null where none was measured. */
  timeInLinePct: number | null;
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
  const peaks = counted.flatMap(({ repetition: { number }, judgement }) => {
    const knee = judgementOf(judgement, 'knee-angle');
    return knee.extreme === null ? [] : [{ number, knee, extreme: knee.extreme }];
  });
  const worst = greatest(peaks, ({ knee }) => beyondShare(knee, limits));
  const ends = new Set(peaks.map(({ extreme }): LimitEnd => (extreme.value < 0 ? 'least' : 'most')));
  const withVerdict = (verdict: Judgement['verdict']) =>
    counted.filter(({ judgement }) => judgement.verdict === verdict).length;
  return {
    done: counted.length,
    excluded: excluded.filter((reason) => reason !== null).length,
    inLine: countSet(
      counted.map(({ repetition: { ranges }, judgement }) => ({ ranges, judgement })),
      limits,
    ),
    notClear: withVerdict('cant-tell'),
    notMeasured: withVerdict('not-measured'),
    lost: lostGroups(counted),
    worst: worst === undefined ? null : { number: worst.number, extreme: worst.extreme },
    medianDeg: median(peaks, ({ extreme }) => Math.abs(extreme.value)) ?? null,
    medianEnd: ends.size === 1 ? [...ends][0]! : null,
    goodRun: longestGoodRun(counted.map(({ judgement }) => judgement.chanceInLine)),
    tempo: (tempos[0] ?? []).map(({ name }, part) => ({
      name,
      seconds: mean(tempos, (parts) => parts[part]?.seconds ?? undefined) ?? null,
    })),
    bend: spreadBetween(
      repetitions.flatMap(({ ranges }) => {
        const deepest = depth.peak(ranges.depth);
        return deepest === null ? [] : [kneeBendDeg(deepest.value)];
      }),
    ),
    trend: withinSetTrend(
      counted.map((one) =>
        isMeasured(one) ? (one.repetition.ranges['knee-angle'].max?.value ?? null) : null,
      ),
    ),
    timeInLinePct: timeInLinePct(measurement, counted.filter(isMeasured), limits),
  };
}

function lostGroups(counted: ReturnType<typeof countedRepetitions>): LostGroup[] {
  const groups: LostGroup[] = [];
  for (const { repetition, judgement } of counted) {
    if (verdictSide(judgement.verdict) !== 'out') continue;
    const { measure, end } = decidingMeasure(judgement);
    const one = { number: repetition.number, isProbable: judgement.verdict === 'probably-out' };
    const group = groups.find((other) => other.measure === measure && other.end === end);
    if (group === undefined) groups.push({ measure, end, repetitions: [one] });
    else group.repetitions.push(one);
  }
  return groups.sort((a, b) => b.repetitions.length - a.repetitions.length);
}

function timeInLinePct(
  { curves }: Pick<Measurement, 'curves'>,
  counted: ReturnType<typeof countedRepetitions>,
  limits: Limits,
): number | null {
  const times = counted.map(({ repetition }) =>
    countWithin(repetition, curves['knee-angle'], limits['knee-angle']),
  );
  const measured = times.reduce((all, one) => all + one.measured, 0);
  return measured === 0 ? null : (100 * times.reduce((all, one) => all + one.within, 0)) / measured;
}
