import type { Task } from '#core/exercises/exercises';
import type { Phase } from '#core/exercises/library/fault';
import type { RepetitionEvents } from '#core/segmentation/findRepetitions';

/**
 * This share of a dip or reach, half of it on either side of the turning point, counts as the turn: our own
 * choice.
 */
const turnShare = 0.2;

/** The part of a movement in which a moment lies; null where its turning point was not seen. */
export function phaseAt(events: RepetitionEvents, shape: Task['shape'], timeMs: number): Phase | null {
  const { startMs, topMs, topEndMs, bottomMs, endMs } = events;
  const halfMs = ((endMs - startMs) * turnShare) / 2;
  const turn =
    shape === 'rise'
      ? topMs !== null && topEndMs !== null && { fromMs: topMs, toMs: topEndMs }
      : bottomMs !== null && { fromMs: bottomMs - halfMs, toMs: bottomMs + halfMs };
  if (turn === false) return null;
  if (timeMs < turn.fromMs) return 'going';
  return timeMs <= turn.toMs ? 'turning' : 'coming-back';
}
