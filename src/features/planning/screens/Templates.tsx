import { useState, type FormEvent } from 'react';
import { Button, Dialog, DialogTrigger, Heading, Input, Label, Text, TextField } from 'react-aria-components';
import { DialogBox } from '#ui/components/DialogBox';
import { usePlanWriting, usePlanWritingState } from '../planWritingContext';
import { longestTemplateName } from '../store/templates';

/** Plans for no one patient, by name: to begin from, to add to, and to delete. */
export function Templates() {
  return (
    <DialogTrigger>
      <Button className="button button-quiet">Templates …</Button>
      <DialogBox isDismissable>
        <Dialog className="dialog">
          {({ close }) => (
            <>
              <Heading slot="title">Templates</Heading>
              <Kept onUse={close} />
              <SaveAs />
              <div className="dialog-answers">
                <Button className="button" onPress={close}>
                  Close
                </Button>
              </div>
            </>
          )}
        </Dialog>
      </DialogBox>
    </DialogTrigger>
  );
}

function Kept({ onUse }: { onUse: () => void }) {
  const writing = usePlanWriting();
  const templates = usePlanWritingState((state) => state.templates);
  if (templates.length === 0) return <p className="soft">None yet.</p>;
  return (
    <ul className="plan-templates">
      {templates.map(({ name, draft }) => (
        <li key={name}>
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
                writing.useTemplate(name);
                onUse();
              }}
            >
              Use
            </Button>
            <Button
              className="button button-quiet"
              aria-label={`Delete ${name}`}
              onPress={() => writing.removeTemplate(name)}
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
  const writing = usePlanWriting();
  const hasItems = usePlanWritingState(({ draft }) => draft.items.length > 0);
  const isThere = usePlanWritingState((state) => state.templates);
  const [text, setText] = useState('');
  const name = text.trim();
  const replaces = isThere.some((one) => one.name === name);
  const save = (event: FormEvent) => {
    event.preventDefault();
    if (name === '' || !hasItems) return;
    writing.saveTemplate(name);
    setText('');
  };
  return (
    <form className="dialog-form" onSubmit={save}>
      <TextField className="field" value={text} maxLength={longestTemplateName} onChange={setText}>
        <Label className="field-label">Save this plan as a template named</Label>
        <Input className="text-input" />
        <Text slot="description" className="small soft">
          Without the patient, the side of tasks for one leg, usual pain, review date and your words to the
          patient.
          {!hasItems && ' Add a task first.'}
        </Text>
      </TextField>
      <div className="button-row">
        <Button type="submit" className="button" isDisabled={name === '' || !hasItems}>
          {replaces ? 'Replace it' : 'Save it'}
        </Button>
      </div>
    </form>
  );
}
