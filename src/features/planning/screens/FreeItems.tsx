import { Button, Input, Label, TextArea, TextField } from 'react-aria-components';
import type { FreeItem } from '#documents/plan/planDocument';
import { planBounds } from '#documents/plan/planRanges';
import { useLibraryState } from '../libraryContext';
import { usePlanWriting, usePlanWritingState } from '../planWritingContext';

const empty: FreeItem = { name: '', how: '', dose: '' };

/** What the library does not know, in the therapist's words: ticked off at home, neither timed nor measured. */
export function FreeItems() {
  const writing = usePlanWriting();
  const freeItems = usePlanWritingState(({ draft }) => draft.freeItems);
  const exercises = useLibraryState((state) => state.library.exercises);
  const put = (next: readonly FreeItem[], field?: string) => writing.change({ freeItems: [...next] }, field);
  return (
    <>
      {freeItems.map((item, index) => {
        const name = item.name === '' ? `Free item ${index + 1}` : item.name;
        const text = (field: keyof FreeItem, label: string, most: number) => (
          <TextField
            className="field"
            value={item[field]}
            maxLength={most}
            onChange={(value) =>
              put(freeItems.with(index, { ...item, [field]: value }), `free-${index}-${field}`)
            }
          >
            <Label className="field-label">{label}</Label>
            {field === 'how' ? (
              <TextArea className="text-input" rows={2} />
            ) : (
              <Input className="text-input" />
            )}
          </TextField>
        );
        return (
          <section key={index} className="card plan-card" aria-label={name}>
            <header className="plan-card-head">
              <h3>{name}</h3>
              <Button
                className="button button-quiet"
                aria-label={`Remove ${name}`}
                onPress={() => put(freeItems.filter((_, at) => at !== index))}
              >
                Remove
              </Button>
            </header>
            <div className="plan-pair">
              {text('name', 'What', planBounds.freeName)}
              {text('dose', 'How much', planBounds.freeDose)}
            </div>
            {text('how', 'How', planBounds.freeHow)}
          </section>
        );
      })}
      <div className="button-row">
        <Button
          className="button"
          isDisabled={freeItems.length >= planBounds.freeItems}
          onPress={() => put([...freeItems, empty])}
        >
          Add something else, in your words
        </Button>
        {exercises.map(({ id, name, how, dose }) => (
          <Button
            key={id}
            className="button button-quiet"
            isDisabled={freeItems.length >= planBounds.freeItems}
            onPress={() => put([...freeItems, { name, how, dose }])}
          >
            Add {name}
          </Button>
        ))}
      </div>
    </>
  );
}
