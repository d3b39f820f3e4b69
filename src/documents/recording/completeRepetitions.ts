import type { Completeness } from '#core/segmentation/findRepetitions';

/** Those that count: complete, and not excluded by hand. */
export function completeRepetitions<
  Repetition extends { completeness: Completeness; excluded?: string | undefined },
>(repetitions: readonly Repetition[]): Repetition[] {
  return repetitions.filter(
    ({ completeness, excluded }) => completeness === 'complete' && excluded === undefined,
  );
}
