import type { Measurement } from '#core/measurement/measurement';

/** Index of the repetition that, after measuring again, is where the selected one was; null where none is. */
export function sameRepetition(
  before: Pick<Measurement, 'repetitions' | 'timesMs'>,
  after: Pick<Measurement, 'repetitions' | 'timesMs'>,
  index: number | null,
): number | null {
  const one = index === null ? undefined : before.repetitions[index];
  if (one === undefined) return null;
  const middleMs = (before.timesMs[one.loadedFrom]! + before.timesMs[one.loadedTo]!) / 2;
  const again = after.repetitions.findIndex(
    ({ loadedFrom, loadedTo }) =>
      after.timesMs[loadedFrom]! <= middleMs && after.timesMs[loadedTo]! >= middleMs,
  );
  return again < 0 ? null : again;
}
