import type { SetStart } from '#device/storage/keptSchemas';
import { notedConditions } from '#documents/plan/notedConditions';
import type { PlanDocument, RepetitionItem } from '#documents/plan/planDocument';
import type { SetStep } from '#documents/plan/planSteps';

/** What is known of a set of repetitions when it is begun to be kept. */
export function buildSetStart(
  { itemIndex, side, number }: SetStep,
  item: RepetitionItem,
  plan: Pick<PlanDocument, 'footwear'> | null,
  known: Pick<SetStart, 'id' | 'visitId' | 'startedAt' | 'widthPx' | 'heightPx' | 'model' | 'videoType'>,
): SetStart {
  const { task, repetitions, limits } = item;
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
      conditions: notedConditions(item, plan),
    },
    setup: { task, side },
    limits,
    note: '',
  };
}
