import type { SetStep } from '#documents/plan/planSteps';

/** Of a repetition without a tempo, s: common practice, no source. */
const usualRepetitionS = 5;
/** Recorded of a set before its first repetition and after its last one, s: found by trial, no source. */
const aroundSetS = 30;

/**
 * Room that the videos of these sets take. Holds are not filmed.
 *
 * @param bytesPerS  of a video
 * @returns  bytes
 */
export function expectVideoBytes(steps: readonly Pick<SetStep, 'item'>[], bytesPerS: number): number {
  let seconds = 0;
  for (const { item } of steps) {
    if (item.kind === 'hold') continue;
    const { tempo, repetitions } = item;
    const repetitionS =
      tempo === null ? usualRepetitionS : tempo.downSeconds + tempo.pauseSeconds + tempo.upSeconds;
    seconds += aroundSetS + repetitions * repetitionS;
  }
  return seconds * bytesPerS;
}
