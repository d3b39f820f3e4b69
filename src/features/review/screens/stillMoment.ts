import type { MeasuredRepetition, Measurement } from '#core/measurement/measurement';
import { tellingMeasure } from '#core/scoring/deciding';
import type { Judgement } from '#core/scoring/judge';

/** The moment of a repetition that is worth a picture. */
export interface StillMoment {
  number: number;
  timeMs: number;
  /** False where nothing was measured; then it is the middle of the repetition. */
  isWorst: boolean;
}

export function stillMoment(
  { timesMs }: Measurement,
  { number, loadedFrom, loadedTo }: MeasuredRepetition,
  judgement: Judgement,
): StillMoment {
  const { extreme: worst } = tellingMeasure(judgement);
  if (worst !== null) return { number, timeMs: worst.timeMs, isWorst: true };
  return { number, timeMs: (timesMs[loadedFrom]! + timesMs[loadedTo]!) / 2, isWorst: false };
}
