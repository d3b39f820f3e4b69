import { usualSureness } from '#core/chance/grade';
import { measureIds } from '#core/measures/measures';
import { chanceWithin, type BandedValue } from '#core/scoring/chanceWithin';
import { gradeAgain, type Judgement } from '#core/scoring/judge';
import { heldExtremes, type MeasureJudgement } from '#core/scoring/judgeMeasure';
import { isFields, type Fields } from '../schema/isFields';

/** Migrates results of version 8 to version 9, which has the chance behind each verdict. */
export function withChances({ repetitions, ...rest }: Fields, limits: unknown): Fields {
  if (!Array.isArray(repetitions)) return { ...rest, repetitions };
  return {
    ...rest,
    repetitions: repetitions.map((one: unknown) =>
      isFields(one) && isFields(one['judgement'])
        ? { ...one, judgement: judged(one['judgement'], one['ranges'], limits) }
        : one,
    ),
  };
}

/** What was near a limit is graded by its chance now; what is damaged is left for the schema to refuse. */
function judged(judgement: Fields, ranges: unknown, limits: unknown): Fields {
  const { measures } = judgement;
  if (!Array.isArray(measures) || measures.length === 0 || !measures.every(isMeasureJudgement))
    return judgement;
  const withChance = measures.map((one: MeasureJudgement) => {
    const { measure, end, extreme } = one;
    const of = (fields: unknown) => (isFields(fields) && isFields(fields[measure]) ? fields[measure] : {});
    const { min, max } = of(ranges);
    const held = {
      ...heldExtremes(measure, { min: bandedOf(min), max: bandedOf(max) }),
      [end]: bandedOf(extreme),
    };
    return { ...one, chanceInLine: extreme === null ? null : chanceWithin(held, of(limits)) };
  });
  return gradeAgain({ ...(judgement as Fields & Judgement), measures: withChance }, usualSureness);
}

function isMeasureJudgement(one: unknown): one is MeasureJudgement {
  return isFields(one) && measureIds.some((id) => id === one['measure']);
}

/** Of an older version that kept one end alone the other is not known. */
function bandedOf(extreme: unknown): BandedValue | null {
  const isBanded =
    isFields(extreme) && typeof extreme['value'] === 'number' && typeof extreme['band'] === 'number';
  return isBanded ? (extreme as Fields & BandedValue) : null;
}
