import type { CountInLine } from '#core/chance/countInLine';
import type { MissingReason } from '#core/measurement/curve';
import type { MeasuredRepetition } from '#core/measurement/measurement';
import { findMeasure, type MeasureId } from '#core/measures/measures';
import type { Limits } from '#core/protocol/limits';
import { countSet, type JudgedExtremes } from '#core/scoring/countSet';
import { decidingWay, type Direction } from '#core/scoring/deciding';
import { findSetPeak, type SetPeak } from '#core/scoring/findSetPeak';
import { judgementOf, type Judgement } from '#core/scoring/judge';
import type { Verdict } from '#core/scoring/verdict';
import { completeRepetitions } from '#documents/recording/completeRepetitions';

/** A repetition as far as a set's result needs it: as a session document holds it, or as measured again. */
export type JudgedRepetition = Pick<MeasuredRepetition, 'number' | 'completeness'> & {
  ranges: JudgedExtremes['ranges'] & Pick<MeasuredRepetition['ranges'], 'knee-angle'>;
  judgement: Judgement;
  /** Why it does not count; left out where it counts. */
  excluded?: string | undefined;
};

/** One repetition as a mark in a row. */
export interface SetMark {
  number: number;
  verdict: Verdict;
  /** The way the knee went, where the verdict rests on it. */
  direction: Direction | null;
  /** Another measure that the verdict rests on. */
  measure: MeasureId | null;
}

/** The result of a recorded set; partial, cut and excluded repetitions are left out. */
export interface SetReport {
  /** One for each complete repetition, in order of time. */
  marks: SetMark[];
  /** How many were in line; null where none was measured. */
  inLine: CountInLine | null;
  /** The reason behind most repetitions without a verdict; null where all have one. */
  mainReason: MissingReason | null;
  /** Null with too few measured repetitions. */
  peak: SetPeak | null;
}

/** The result of a set, judged by these limits and as surely as these judgements were. */
export function buildSetReport(repetitions: readonly JudgedRepetition[], limits: Limits): SetReport {
  const complete = completeRepetitions(repetitions);
  return {
    marks: complete.map(({ number, judgement }) => ({
      number,
      verdict: judgement.verdict,
      direction: decidingWay(judgement),
      measure: findMeasure(judgement.decidedBy).isAlwaysLimited ? null : judgement.decidedBy,
    })),
    inLine: countSet(complete, limits),
    mainReason: mostFrequent(
      complete.flatMap(({ judgement: { reason } }) => (reason === null ? [] : [reason])),
    ),
    peak: findSetPeak(
      complete.filter(({ judgement }) => judgementOf(judgement, 'knee-angle').verdict !== 'not-measured'),
    ),
  };
}

/** The first one where several are equally frequent; null where there is none. */
export function mostFrequent<Value>(values: readonly Value[]): Value | null {
  const counts = new Map<Value, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  let most: Value | null = null;
  for (const [value, count] of counts) {
    if (most === null || count > counts.get(most)!) most = value;
  }
  return most;
}
