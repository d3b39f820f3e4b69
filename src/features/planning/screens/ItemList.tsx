import { Button, Dialog, DialogTrigger, ListBox, ListBoxItem, Popover } from 'react-aria-components';
import { findExercise } from '#core/exercises/exercises';
import { libraryIds } from '#core/exercises/library/libraryIds';
import { itemName } from '#documents/plan/itemName';
import type { PlanItem } from '#documents/plan/planDocument';
import { newItem } from '#documents/plan/planDraft';
import { planBounds } from '#documents/plan/planRanges';
import { Message } from '#ui/components/Message';
import { useLibraryState } from '../libraryContext';
import { usePlanWriting, usePlanWritingState } from '../planWritingContext';
import { withFirstLimits } from '../rules/libraryCandidates';
import { sideSentences } from '../rules/sideSentences';
import { painfulSideOf } from '../store/createPlanWriting';
import { FirstTask } from './FirstTask';
import { FreeItems } from './FreeItems';
import { ItemCard } from './ItemCard';
import { Restrictions } from './Restrictions';
import { useItemKeys } from './useItemKeys';
import { useTaskFocus } from './useTaskFocus';

/** The tasks in order. */
export function ItemList() {
  const writing = usePlanWriting();
  const items = usePlanWritingState(({ draft }) => draft.items);
  const painful = usePlanWritingState(painfulSideOf);
  const library = useLibraryState((state) => state.library);
  const keyOf = useItemKeys();
  const { list, focusNext } = useTaskFocus(items);
  const put = (next: readonly PlanItem[], field?: string) => writing.change({ items: [...next] }, field);
  const move = (from: number, to: number) => {
    const next = [...items];
    const [moved] = next.splice(from, 1);
    next.splice(to, 0, moved!);
    focusNext({ index: to, move: to < from ? 'up' : 'down' });
    put(next);
  };
  const remove = (index: number) => {
    focusNext({ index, move: null });
    put(items.filter((_, at) => at !== index));
  };
  return (
    <section className="plan-items-form" aria-labelledby="tasks-title" ref={list}>
      <h2 id="tasks-title">Tasks, in order</h2>
      {items.length === 0 && (
        <FirstTask painful={painful} onChoose={(item) => put([withFirstLimits(item, library)])} />
      )}
      {sideSentences(items, painful).map((sentence) => (
        <Message key={sentence} kind="caution" title="Sides">
          {sentence}
        </Message>
      ))}
      <Restrictions />
      <ol className="plan-cards">
        {items.map((item, index) => (
          <li key={keyOf.key(item)}>
            <ItemCard
              item={item}
              number={index + 1}
              painful={painful}
              onChange={(next, field) => {
                keyOf.follow(next, item);
                put(items.with(index, next), field && `${index}-${field}`);
              }}
              onRemove={() => remove(index)}
              onMoveUp={index === 0 ? null : () => move(index, index - 1)}
              onMoveDown={index === items.length - 1 ? null : () => move(index, index + 1)}
            />
          </li>
        ))}
      </ol>
      <DialogTrigger>
        <Button className="button button-primary plan-add" isDisabled={items.length >= planBounds.items}>
          Add a task
        </Button>
        <Popover className="popover">
          <Dialog aria-label="Task library" className="plan-library">
            {({ close }) => (
              <ListBox
                aria-label="Tasks"
                autoFocus
                onAction={(id) => {
                  const chosen = libraryIds.find((known) => known === id);
                  if (chosen !== undefined) put([...items, withFirstLimits(newItem(chosen), library)]);
                  close();
                }}
              >
                {libraryIds.map((id) => (
                  <ListBoxItem key={id} id={id} textValue={itemName(newItem(id))} className="option">
                    <strong>{itemName(newItem(id))}</strong>
                    <span className="small soft">{findExercise(id).purpose}</span>
                  </ListBoxItem>
                ))}
              </ListBox>
            )}
          </Dialog>
        </Popover>
      </DialogTrigger>
      <FreeItems />
    </section>
  );
}
