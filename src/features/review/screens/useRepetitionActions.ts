import { useMemo } from 'react';
import type { Measurement } from '#core/measurement/measurement';
import type { Judgement } from '#core/scoring/judge';
import type { Playhead } from './playhead';
import { stillMoment } from './stillMoment';
import type { RepetitionActions } from './useReviewKeys';

/** What moves the picture along the selected repetition; null where none is selected. */
export function useRepetitionActions(
  measurement: Measurement,
  selected: number | null,
  judgements: readonly Judgement[],
  playhead: Playhead,
  goTo: (timeMs: number) => void,
): RepetitionActions | null {
  return useMemo(() => {
    const repetition = selected === null ? undefined : measurement.repetitions[selected];
    const judgement = selected === null ? undefined : judgements[selected];
    if (repetition === undefined || judgement === undefined) return null;
    const { timesMs } = measurement;
    return {
      toggleLoop() {
        const isLooping = playhead.state().loop !== null;
        playhead.setLoop(
          isLooping ? null : { fromMs: timesMs[repetition.loadedFrom]!, toMs: timesMs[repetition.loadedTo]! },
        );
        if (!isLooping && !playhead.state().isPlaying) playhead.togglePlaying();
      },
      goToWorst: () => goTo(stillMoment(measurement, repetition, judgement).timeMs),
    };
  }, [measurement, selected, judgements, playhead, goTo]);
}
