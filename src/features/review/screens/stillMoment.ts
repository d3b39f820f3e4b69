import type { MeasuredRepetition, Measurement } from '#core/measurement/measurement';
import { tellingMeasure } from '#core/scoring/deciding';
import type { Judgement } from '#core/scoring/judge';
import type { ReviewState } from '../store/reviewState';

/** The moment of a repetition that is worth a picture. */
export interface StillMoment {
  number: number;
  timeMs: number;
  /** False where nothing was measured; then it is the middle of the repetition. */
  isWorst: boolean;
}

/** The worst instant of the selected repetition, ms; null where none is selected. */
export function worstMs({
  recording,
  selected,
  judgements,
}: Pick<ReviewState, 'recording' | 'selected' | 'judgements'>): number | null {
  const repetition = selected === null ? undefined : recording?.measurement.repetitions[selected];
  const judgement = selected === null ? undefined : judgements[selected];
  if (recording === null || repetition === undefined || judgement === undefined) return null;
  return stillMoment(recording.measurement, repetition, judgement).timeMs;
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
