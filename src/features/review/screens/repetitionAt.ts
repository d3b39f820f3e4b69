import type { Measurement } from '#core/measurement/measurement';

/** Index of the repetition that is loaded at a time; null between repetitions. */
export function repetitionAt(
  { repetitions, timesMs }: Pick<Measurement, 'repetitions' | 'timesMs'>,
  timeMs: number,
): number | null {
  const index = repetitions.findIndex(
    ({ loadedFrom, loadedTo }) => timeMs >= timesMs[loadedFrom]! && timeMs <= timesMs[loadedTo]!,
  );
  return index < 0 ? null : index;
}
