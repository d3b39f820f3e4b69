import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import type { Measurement } from '#core/measurement/measurement';
import type { Extreme } from '#core/measurement/measureRange';
import { mapMeasures, type MeasureId } from '#core/measures/measures';
import type { Limits } from '#core/protocol/limits';
import { countWithin } from '#core/scoring/countWithin';
import { kneeDirection } from '#core/scoring/deciding';
import { judgementOf, type Judgement } from '#core/scoring/judge';
import { kneeAtDeepest } from '#core/scoring/kneeAtDeepest';
import { verdicts, verdictSide } from '#core/scoring/verdict';

/** What the table shows of one repetition. */
export interface RepetitionRow {
  index: number;
  number: number;
  startMs: number;
  judgement: Judgement;
  /** When the worst moment is, 0 to 100 % of the loaded time; null where nothing was measured. */
  worstAtPct: number | null;
  /** The knee angle where the knee is bent most; null where it is not measured there. */
  deepest: Pick<Extreme, 'value' | 'band'> | null;
  /** Measured time out of the limits; null where not measured. */
  outOfLimitsMs: number | null;
  /** Share of the loaded time that was measured, 0 to 100 %. */
  measuredPct: number;
  /** The value of each measure; of the knee angle the one that was judged. */
  measures: Record<MeasureId, Extreme | null>;
  excluded: string | null;
  isByHand: boolean;
  /** Whether a closer look at this recording has not come to it. */
  isSeenOnce: boolean;
}

/** What is known of repetitions besides their measurement; one per repetition. */
export interface RowMarks {
  /** Why it does not count; null where it counts. */
  excluded: readonly (string | null)[];
  handMade: readonly boolean[];
  /** The joints, and which of their frames were looked at more closely. */
  observed: Pick<KeypointTrack, 'closer'>;
}

export function repetitionRows(
  measurement: Measurement,
  judgements: readonly Judgement[],
  limits: Limits,
  { excluded, handMade, observed: { closer } }: RowMarks,
): RepetitionRow[] {
  const { repetitions, timesMs, rateHz, curves } = measurement;
  return repetitions.flatMap((repetition, index) => {
    const judgement = judgements[index];
    if (judgement === undefined) return [];
    const { loadedFrom, loadedTo, number, ranges } = repetition;
    const isSeenOnce = closer !== undefined && timesMs[loadedTo]! > closer.untilMs;
    const { extreme: worst, verdict: knee } = judgementOf(judgement, 'knee-angle');
    const { measured, within } = countWithin(repetition, curves['knee-angle'], limits['knee-angle']);
    return {
      index,
      number,
      judgement,
      startMs: timesMs[loadedFrom]!,
      worstAtPct:
        worst === null ? null : (100 * (worst.sample - loadedFrom)) / Math.max(1, loadedTo - loadedFrom),
      deepest: kneeAtDeepest(measurement, repetition),
      outOfLimitsMs: knee === 'not-measured' ? null : ((measured - within) * 1000) / rateHz,
      measuredPct: 100 * ranges['knee-angle'].measuredShare,
      measures: { ...mapMeasures((id, { peak }) => peak(ranges[id])), 'knee-angle': worst },
      excluded: excluded[index] ?? null,
      isByHand: handMade[index] ?? false,
      isSeenOnce,
    };
  });
}

export type SortKey =
  'number' | 'verdict' | 'score' | 'worst-at' | 'at-deepest' | 'out-of-limits' | 'measured' | MeasureId;

/** Rows in another order; rows without a value come last, and ties are in order of time. */
export function sortedRows(
  rows: readonly RepetitionRow[],
  key: SortKey,
  direction: 'ascending' | 'descending',
): RepetitionRow[] {
  const sign = direction === 'ascending' ? 1 : -1;
  return [...rows].sort((a, b) => {
    const [first, second] = [sortValue(a, key), sortValue(b, key)];
    if (first === null || second === null)
      return Number(first === null) - Number(second === null) || a.index - b.index;
    return sign * (first - second) || a.index - b.index;
  });
}

function sortValue({ number, judgement, ...row }: RepetitionRow, key: SortKey): number | null {
  const { verdict, alignmentScorePct } = judgement;
  switch (key) {
    case 'number':
      return number;
    case 'verdict':
      return verdicts.indexOf(verdict);
    case 'score':
      return alignmentScorePct;
    case 'worst-at':
      return row.worstAtPct;
    case 'at-deepest':
      return row.deepest?.value ?? null;
    case 'out-of-limits':
      return row.outOfLimitsMs;
    case 'measured':
      return row.measuredPct;
    default:
      return row.measures[key]?.value ?? null;
  }
}

export type RowFilter =
  'all' | 'in' | 'out' | 'cant-tell' | 'not-measured' | 'inward' | 'outward' | 'excluded';

/** Rows that pass a filter, 'in' and 'out' with those that probably are; excluded ones show under 'all' and under 'excluded' only. */
export function filteredRows(rows: readonly RepetitionRow[], filter: RowFilter): RepetitionRow[] {
  return rows.filter(({ judgement, excluded }) => {
    if (filter === 'all') return true;
    if (filter === 'excluded') return excluded !== null;
    if (excluded !== null) return false;
    if (filter === 'inward' || filter === 'outward')
      return (
        kneeDirection(judgement) === filter &&
        verdictSide(judgementOf(judgement, 'knee-angle').verdict) !== 'in'
      );
    const { verdict } = judgement;
    return (verdictSide(verdict) ?? verdict) === filter;
  });
}
