import { greatest, least } from 'd3-array';
import { tellingMeasure } from '#core/scoring/deciding';
import type { Judgement } from '#core/scoring/judge';

/** A repetition that is worth looking at again. */
export interface ReplayPick {
  /** 'edge': the one least likely to have been in line. */
  kind: 'best' | 'edge';
  recordingId: string;
  /** From 1 on, among those of its set that count. */
  place: number;
  judgement: Judgement;
  /** The stretch of its video, ms. */
  fromMs: number;
  toMs: number;
  /** The moment that its verdict rests on, ms. */
  stillMs: number;
}

export interface ReplaySet {
  recordingId: string;
  /** Those that count, in order. */
  repetitions: readonly { judgement: Judgement; events: { startMs: number; endMs: number } }[];
}

/** The best repetition of a session and the one nearest to the edge; one alone, or none, where no more were measured. */
export function pickReplays(sets: readonly ReplaySet[]): ReplayPick[] {
  const measured = sets.flatMap(({ recordingId, repetitions }) =>
    repetitions
      .map(({ judgement, events: { startMs, endMs } }, index) => ({
        recordingId,
        place: index + 1,
        judgement,
        fromMs: startMs,
        toMs: endMs,
        stillMs: tellingMeasure(judgement).extreme?.timeMs ?? (startMs + endMs) / 2,
      }))
      .filter(({ judgement }) => judgement.chanceInLine !== null),
  );
  const chance = ({ judgement }: { judgement: Judgement }) => judgement.chanceInLine!;
  const [best, edge] = [greatest(measured, chance), least(measured, chance)];
  if (best === undefined || edge === undefined) return [];
  return [{ kind: 'best', ...best }, ...(edge === best ? [] : [{ kind: 'edge' as const, ...edge }])];
}
