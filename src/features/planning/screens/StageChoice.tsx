import { findExercise } from '#core/exercises/exercises';
import { atStage, stageOf } from '#documents/plan/itemProgress';
import type { PlanItem } from '#documents/plan/planDocument';
import { Choice } from '#ui/components/Choice';

interface Props {
  item: PlanItem;
  onChange: (item: PlanItem) => void;
}

/** At which of its exercise's stages an item stands; choosing one fills in its figures, which can be changed. */
export function StageChoice({ item, onChange }: Props) {
  const { stages } = findExercise(item.task);
  const options = stages.map(({ id, words }, i) => ({ id, name: `${i + 1} of ${stages.length}: ${words}` }));
  const none = item.stage !== null && stageOf(item) === null ? item.stage : 'none';
  return (
    <Choice
      label="Stage"
      options={[{ id: none, name: none === 'none' ? 'No stage' : `“${none}”` }, ...options]}
      value={item.stage ?? 'none'}
      onChange={(id) => onChange(atStage(item, stages.find((stage) => stage.id === id) ?? null))}
    />
  );
}
