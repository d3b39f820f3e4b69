import { useState, type FormEvent } from 'react';
import { Button, Input, Label, Text, TextField } from 'react-aria-components';
import { libraryBounds } from '#documents/library/libraryDocument';
import { templateOf } from '#documents/plan/planDraft';
import { readDraft } from '#documents/plan/readDraft';
import { ErrorLine } from '#ui/components/ErrorLine';
import { HeadDialog } from '#ui/components/HeadDialog';
import { useLibrary, useLibraryState } from '../libraryContext';
import { usePlanWriting, usePlanWritingState } from '../planWritingContext';

/** Plans for no one patient, by name: to begin from, to add to, and to delete. */
export function Templates() {
  return (
    <HeadDialog name="Templates …" title="Templates">
      {(close) => (
        <>
          <Kept onUse={close} />
          <SaveAs />
        </>
      )}
    </HeadDialog>
  );
}

function Kept({ onUse }: { onUse: () => void }) {
  const writing = usePlanWriting();
  const library = useLibrary();
  const kept = useLibraryState((state) => state.library.templates);
  const templates = kept
    .flatMap(({ id, name, draft }) => {
      const read = readDraft(draft);
      return read === null ? [] : [{ id, name, draft: read }];
    })
    .sort((a, b) => a.name.localeCompare(b.name));
  if (templates.length === 0) return <p className="soft">None yet.</p>;
  return (
    <ul className="plan-templates">
      {templates.map(({ id, name, draft }) => (
        <li key={id}>
          <span>
            <strong>{name}</strong>{' '}
            <span className="small soft">
              {draft.items.length === 1 ? '1 task' : `${draft.items.length} tasks`}
            </span>
          </span>
          <span className="button-row">
            <Button
              className="button"
              aria-label={`Use ${name}`}
              onPress={() => {
                writing.useTemplate(draft);
                onUse();
              }}
            >
              Use
            </Button>
            <Button
              className="button button-quiet"
              aria-label={`Delete ${name}`}
              onPress={() => void library.remove('templates', id)}
            >
              Delete
            </Button>
          </span>
        </li>
      ))}
    </ul>
  );
}

function SaveAs() {
  const library = useLibrary();
  const sentence = useLibraryState((state) => state.sentence);
  const draft = usePlanWritingState((state) => state.draft);
  const hasItems = draft.items.length > 0;
  const isThere = useLibraryState((state) => state.library.templates);
  const [text, setText] = useState('');
  const name = text.trim();
  const replaces = isThere.some((one) => one.name === name);
  const save = (event: FormEvent) => {
    event.preventDefault();
    if (name === '' || !hasItems) return;
    void library.keep('templates', { name, draft: { ...templateOf(draft) } });
    setText('');
  };
  return (
    <form className="dialog-form" onSubmit={save}>
      <TextField className="field" value={text} maxLength={libraryBounds.name} onChange={setText}>
        <Label className="field-label">Save this plan as a template named</Label>
        <Input className="text-input" />
        <Text slot="description" className="small soft">
          Without the patient, the side of tasks for one leg, usual pain, review date, keys and your words to
          the patient.
          {!hasItems && ' Add a task first.'}
        </Text>
      </TextField>
      <div className="button-row">
        <Button type="submit" className="button" isDisabled={name === '' || !hasItems}>
          {replaces ? 'Replace it' : 'Save it'}
        </Button>
      </div>
      <ErrorLine sentence={sentence} />
    </form>
  );
}
