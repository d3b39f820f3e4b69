import { useState, type FormEvent } from 'react';
import { Button, Input, Label, Text, TextField } from 'react-aria-components';
import { longestStageWords, mostStages, stagesFor, type AnyStage } from '#documents/library/stages';
import type { PlanItem } from '#documents/plan/planDocument';
import { ErrorLine } from '#ui/components/ErrorLine';
import { HeadDialog } from '#ui/components/HeadDialog';
import { exerciseName } from '#words/exerciseWords';
import { useLibrary, useLibraryState } from '../libraryContext';
import { moved, renamed, without, withStage } from '../rules/stageEdits';

/** The practice's stages of an item's exercise: other words, another order, fewer or more. */
export function EditStages({ item }: { item: PlanItem }) {
  return (
    <HeadDialog name="Edit the stages …" title={`Stages: ${exerciseName(item.task)}`}>
      <Stages item={item} />
    </HeadDialog>
  );
}

function Stages({ item }: { item: PlanItem }) {
  const library = useLibrary();
  const own = useLibraryState((state) => state.stages);
  const canUndo = useLibraryState((state) => state.canUndoStages);
  const sentence = useLibraryState((state) => state.sentence);
  const stages = stagesFor(item.task, own);
  const change = (next: (now: readonly AnyStage[]) => readonly AnyStage[]) =>
    void library.changeStages(item.task, next);
  return (
    <>
      <p className="small soft">
        From easier to harder, for all plans that are written here: they belong to the practice’s library.
        Plans that were handed out stay as they are.
      </p>
      <ol className="plan-stages">
        {stages.map(({ id, words }, index) => (
          <li key={id}>
            <StageWords
              key={words}
              words={words}
              onChange={(next) => change((now) => renamed(now, id, next))}
            />
            <span className="button-row">
              <Button
                className="button button-quiet"
                aria-label={`Move up: ${words}`}
                isDisabled={index === 0}
                onPress={() => change((now) => moved(now, id, -1))}
              >
                ↑
              </Button>
              <Button
                className="button button-quiet"
                aria-label={`Move down: ${words}`}
                isDisabled={index === stages.length - 1}
                onPress={() => change((now) => moved(now, id, 1))}
              >
                ↓
              </Button>
              <Button
                className="button button-quiet"
                aria-label={`Remove: ${words}`}
                isDisabled={stages.length === 1}
                onPress={() => change((now) => without(now, id))}
              >
                Remove
              </Button>
            </span>
          </li>
        ))}
      </ol>
      <AddStage
        isFull={stages.length >= mostStages}
        onAdd={(words) => change((now) => withStage(now, item, words))}
      />
      <div className="button-row">
        <Button className="button" isDisabled={!canUndo} onPress={() => void library.undoStages()}>
          Undo
        </Button>
        <Button
          className="button"
          isDisabled={own[item.task] === undefined}
          onPress={() => void library.changeStages(item.task, null)}
        >
          Back to the program’s own
        </Button>
      </div>
      <ErrorLine sentence={sentence} />
    </>
  );
}

/** Kept when the field is left, so that a whole sentence is undone at once. */
function StageWords({ words, onChange }: { words: string; onChange: (words: string) => void }) {
  const [text, setText] = useState(words);
  return (
    <TextField
      className="field"
      aria-label="Words of the stage"
      value={text}
      maxLength={longestStageWords}
      onChange={setText}
      onBlur={() => {
        const next = text.trim();
        if (next === '') setText(words);
        else if (next !== words) onChange(next);
      }}
    >
      <Input className="text-input" />
    </TextField>
  );
}

function AddStage({ isFull, onAdd }: { isFull: boolean; onAdd: (words: string) => void }) {
  const [text, setText] = useState('');
  const add = (event: FormEvent) => {
    event.preventDefault();
    const words = text.trim();
    if (words === '' || isFull) return;
    onAdd(words);
    setText('');
  };
  return (
    <form className="dialog-form" onSubmit={add}>
      <TextField className="field" value={text} maxLength={longestStageWords} onChange={setText}>
        <Label className="field-label">Add a stage, in a sentence</Label>
        <Input className="text-input" />
        <Text slot="description" className="small soft">
          {isFull
            ? `No more than ${mostStages} stages.`
            : 'It comes last, with the figures that the task has in the plan now: repetitions, seat, step, bend, holding on, load, tempo and goal.'}
        </Text>
      </TextField>
      <div className="button-row">
        <Button type="submit" className="button" isDisabled={text.trim() === '' || isFull}>
          Add it
        </Button>
      </div>
    </form>
  );
}
