import type { SetStart } from '#device/storage/keptSchemas';
import type { RepetitionItem } from '#documents/plan/planDocument';
import type { SetStep } from '#documents/plan/planSteps';

/** What is known of a set of repetitions when it is begun to be kept. */
export function buildSetStart(
  { itemIndex, side, number }: SetStep,
  { task, repetitions, limits }: RepetitionItem,
  known: Pick<SetStart, 'id' | 'visitId' | 'startedAt' | 'widthPx' | 'heightPx' | 'model' | 'videoType'>,
): SetStart {
  return {
    ...known,
    visitSet: {
      sessionId: null,
      item: itemIndex,
      task,
      side,
      number,
      prescribedRepetitions: repetitions,
      painDuring: null,
      cutShort: null,
      heldMs: null,
    },
    setup: { task, side },
    limits,
    note: '',
  };
}
