import type { TimedSetup } from '#core/measurement/measureSet';
import type { Review } from './review';
import type { ReviewParts } from './reviewParts';

/** Task, side and body height. */
export function settingUp(
  { adapters: { navigation }, get, set, keeper, showing }: ReviewParts,
  correct: Review['correct'],
): Pick<Review, 'setTask' | 'setSide' | 'setBodyHeight'> {
  /** Null where it is not being reviewed: then the next one is set up. */
  const reviewed = () => (navigation.screen() === 'review' ? get().recording : null);
  const change = (part: Partial<Pick<TimedSetup, 'task' | 'bodyHeightCm'>>) => {
    const recording = reviewed();
    set({ setup: { ...get().setup, ...part } });
    if (recording === null) return;
    showing.measureAgain({ ...recording.setup, ...part });
    keeper.changed();
  };

  return {
    setTask: (task) => change({ task }),
    setSide(side) {
      const recording = reviewed();
      if (recording === null) set({ setup: { ...get().setup, side } });
      else if (recording.measurement.setup.side !== side) correct({ kind: 'working-side', side });
    },
    setBodyHeight: (bodyHeightCm) => change({ bodyHeightCm }),
  };
}
