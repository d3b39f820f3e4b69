import { stagesFor } from '#documents/library/stages';
import { atStage } from '#documents/plan/itemProgress';
import type { PlanItem } from '#documents/plan/planDocument';
import { Choice } from '#ui/components/Choice';
import { useLibraryState } from '../libraryContext';

interface Props {
  item: PlanItem;
  onChange: (item: PlanItem) => void;
}

/** At which of its exercise's stages an item stands; choosing one fills in its figures, which can be changed. */
export function StageChoice({ item, onChange }: Props) {
  const stages = stagesFor(
    item.task,
    useLibraryState((state) => state.stages),
  );
  const options = stages.map(({ id, words }, i) => ({ id, name: `${i + 1} of ${stages.length}: ${words}` }));
  const isListed = stages.some(({ id }) => id === item.stage);
  const none = item.stage !== null && !isListed ? item.stage : 'none';
  return (
    <Choice
      label="Stage"
      options={[{ id: none, name: none === 'none' ? 'No stage' : `“${none}”` }, ...options]}
      value={item.stage ?? 'none'}
      onChange={(id) => onChange(atStage(item, stages.find((stage) => stage.id === id) ?? null))}
    />
  );
}
