import type { CorrectionChange } from '#core/correction/correction';
import type { Measurement } from '#core/measurement/measurement';
import { formatTime } from '#words/formatTime';

export interface CorrectionChoice {
  id: string;
  name: string;
  hint: string;
  change: CorrectionChange;
}

/** A time within a repetition, by which corrections refer to it. */
export function middleMs(
  { repetitions, timesMs }: Pick<Measurement, 'repetitions' | 'timesMs'>,
  index: number,
): number {
  const repetition = repetitions[index];
  return repetition === undefined ? 0 : (timesMs[repetition.loadedFrom]! + timesMs[repetition.loadedTo]!) / 2;
}

/** What can be corrected on a repetition at the video's position; excluding, which asks for a reason, is separate. */
export function correctionChoices(
  measurement: Measurement,
  isExcluded: boolean,
  index: number,
  videoMs: number,
): CorrectionChoice[] {
  const { repetitions, timesMs } = measurement;
  const repetition = repetitions[index];
  if (repetition === undefined) return [];
  const atMs = middleMs(measurement, index);
  const [fromMs, toMs] = [timesMs[repetition.loadedFrom]!, timesMs[repetition.loadedTo]!];
  const choices: CorrectionChoice[] = [];
  const add = (id: string, name: string, hint: string, change: CorrectionChange) =>
    choices.push({ id, name, hint, change });
  const here = formatTime(videoMs);
  if (isExcluded) add('include', 'Include it again', 'Undoes the exclusion', { kind: 'include', atMs });
  if (videoMs > fromMs && videoMs < toMs)
    add('split', 'Split it here', `In two, at ${here}, where the video is now`, {
      kind: 'split',
      atMs: videoMs,
    });
  for (const [other, which] of [
    [index - 1, 'before'],
    [index + 1, 'after'],
  ] as const) {
    if (repetitions[other] === undefined) continue;
    const withMs = middleMs(measurement, other);
    add(`join-${which}`, `Join it with the one ${which}`, 'They are one repetition', {
      kind: 'join',
      atMs,
      withMs,
    });
  }
  if (videoMs < toMs)
    add('start', 'Start it here', `At ${here}`, {
      kind: 'move-edge',
      atMs,
      edge: 'start',
      toMs: videoMs,
    });
  if (videoMs > fromMs)
    add('end', 'End it here', `At ${here}`, { kind: 'move-edge', atMs, edge: 'end', toMs: videoMs });
  return choices;
}
