import type { MeasuredRepetition, Measurement } from '#core/measurement/measurement';
import type { Judgement } from '#core/scoring/judge';

/** A repetition with its place in the measurement and its verdict. */
export interface CountedRepetition {
  index: number;
  repetition: MeasuredRepetition;
  judgement: Judgement;
}

/** The repetitions that count: complete, and not excluded. */
export function countedRepetitions(
  { repetitions }: Pick<Measurement, 'repetitions'>,
  judgements: readonly Judgement[],
  excluded: readonly (string | null)[],
): CountedRepetition[] {
  return repetitions.flatMap((repetition, index) => {
    const judgement = judgements[index];
    const counts = repetition.completeness === 'complete' && (excluded[index] ?? null) === null;
    return counts && judgement !== undefined ? [{ index, repetition, judgement }] : [];
  });
}
