import type { TrueRepetition } from './clipTruth';
import type { RecordingRepetition } from './readPeak';

/** A true repetition with the found one that overlaps it, or null where none does. */
export interface Match {
  truth: TrueRepetition;
  found: RecordingRepetition | null;
}

/**
 * Pairs true and found repetitions by how long their loaded times overlap, the longest overlap first, each at most
 * once.
 *
 * @param found  complete repetitions only
 * @returns  one a true repetition, in the order given
 */
export function matchRepetitions(
  truths: readonly TrueRepetition[],
  found: readonly RecordingRepetition[],
): Match[] {
  const pairs = truths
    .flatMap((truth) =>
      found.map((repetition) => ({ truth, repetition, overlapS: overlapS(truth, repetition) })),
    )
    .filter((pair) => pair.overlapS > 0)
    .sort((a, b) => b.overlapS - a.overlapS);
  const taken = new Map<TrueRepetition, RecordingRepetition>();
  const used = new Set<RecordingRepetition>();
  for (const { truth, repetition } of pairs) {
    if (taken.has(truth) || used.has(repetition)) continue;
    taken.set(truth, repetition);
    used.add(repetition);
  }
  return truths.map((truth) => ({ truth, found: taken.get(truth) ?? null }));
}

function overlapS(truth: TrueRepetition, { events }: RecordingRepetition): number {
  const from = Math.max(truth.liftOff ?? truth.start, (events.seatOffMs ?? events.startMs) / 1000);
  const to = Math.min(truth.touchDown ?? truth.end, (events.seatContactMs ?? events.endMs) / 1000);
  return to - from;
}
