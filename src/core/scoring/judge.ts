import { usualSureness, type Sureness } from '../chance/grade';
import type { MissingReason } from '../measurement/curve';
import type { MeasuredRepetition, Measurement } from '../measurement/measurement';
import { findMeasure, type AlwaysLimitedId, type MeasureId } from '../measures/measures';
import { limitedMeasures, type Limits } from '../protocol/limits';
import { countWithin } from './countWithin';
import { judgeMeasure, type MeasureJudgement } from './judgeMeasure';
import { byGravity, verdictOf, type Verdict } from './verdict';

/** What a repetition's verdict is, and what it rests on. */
export interface Judgement {
  /** Of everything that is limited together. */
  verdict: Verdict;
  /** Chance that the measure that the verdict rests on was within its limits, 0 to 1; null where not measured. */
  chanceInLine: number | null;
  /** Why there is no verdict; null where there is one. */
  reason: MissingReason | null;
  /** The measure that the verdict rests on, or that it lacks. */
  decidedBy: MeasureId;
  /**
   * Share of the measured loaded time in which the knee angle was within its limits, 0 to 100 %; null where it was not
   * measured.
   */
  alignmentScorePct: number | null;
  /** One for each measure that has a limit. */
  measures: MeasureJudgement[];
}

/**
 * Judges one repetition against limits.
 *
 * Each measure is graded by itself, by the chance that its error band leaves for its having been within its limits.
 * The repetition gets the gravest of these grades; where a measure could not be judged, that goes before whatever is
 * not at least probably out of line.
 *
 * @param sureness  how sure it has to be before a side is named
 */
export function judge(
  repetition: MeasuredRepetition,
  { curves }: Pick<Measurement, 'curves'>,
  limits: Limits,
  sureness: Sureness = usualSureness,
): Judgement {
  const measures = limitedMeasures(limits).map((id) =>
    judgeMeasure(id, repetition.ranges[id], limits[id] ?? {}, sureness),
  );
  const isMissing = judgementOf({ measures }, 'knee-angle').verdict === 'not-measured';
  return {
    ...combine(measures),
    alignmentScorePct: isMissing ? null : scorePct(repetition, curves, limits),
  };
}

/** What the measures that have a limit say together. */
function combine(measures: MeasureJudgement[]): Omit<Judgement, 'alignmentScorePct'> {
  const { verdict, chanceInLine, reason, measure } = gravest(measures);
  return { verdict, chanceInLine, reason, decidedBy: measure, measures };
}

/** The same judgement for somebody who wants to be more or less sure. */
export function gradeAgain<Judged extends Judgement>(judgement: Judged, sureness: Sureness): Judged {
  const measures = judgement.measures.map((one) => ({
    ...one,
    verdict: verdictOf(one.chanceInLine, sureness),
  }));
  return { ...judgement, ...combine(measures) };
}

/** How one of the measures that always have limits was judged. */
export function judgementOf(
  { measures }: Pick<Judgement, 'measures'>,
  id: AlwaysLimitedId,
): MeasureJudgement {
  return measures.find(({ measure }) => measure === id)!;
}

/**
 * The judgement that the verdict rests on. Of several with the same verdict a measure that always has limits comes
 * first, since every recording is compared by it; then the one that is least likely to have been in line.
 */
function gravest(measures: readonly MeasureJudgement[]): MeasureJudgement {
  const rank = ({ verdict }: MeasureJudgement) => byGravity.indexOf(verdict);
  const chance = ({ measure, chanceInLine }: MeasureJudgement) =>
    findMeasure(measure).isAlwaysLimited ? -1 : (chanceInLine ?? 0);
  return measures.reduce((a, b) => {
    if (rank(a) !== rank(b)) return rank(a) < rank(b) ? a : b;
    return chance(b) < chance(a) ? b : a;
  });
}

function scorePct(repetition: MeasuredRepetition, curves: Measurement['curves'], limits: Limits): number {
  const { measured, within } = countWithin(repetition, curves['knee-angle'], limits['knee-angle']);
  return (100 * within) / measured;
}
