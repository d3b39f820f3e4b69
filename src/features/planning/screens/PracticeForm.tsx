import { useState, type FormEvent } from 'react';
import { Button, Heading, Input, Label, TextField } from 'react-aria-components';
import { usePlanWriting, usePlanWritingState } from '../planWritingContext';
import { longestPractice } from '../store/practice';

/** What the paper says of the practice: asked before the first one is printed, and kept on this device. */
export function PracticeForm({ answer, onDone }: { answer: string; onDone: () => void }) {
  const writing = usePlanWriting();
  const practice = usePlanWritingState((state) => state.practice);
  const [name, setName] = useState(practice?.name ?? '');
  const [telephone, setTelephone] = useState(practice?.telephone ?? '');
  const submit = (event: FormEvent) => {
    event.preventDefault();
    writing.setPractice({ name: name.trim(), telephone: telephone.trim() });
    onDone();
  };
  return (
    <form className="dialog-form" onSubmit={submit}>
      <Heading slot="title">Your practice on the paper</Heading>
      <p>
        So that the patient knows whom to call. Kept on this device and on the paper; leave it empty if you
        like.
      </p>
      <TextField className="field" value={name} maxLength={longestPractice} onChange={setName}>
        <Label className="field-label">Practice</Label>
        <Input className="text-input" />
      </TextField>
      <TextField
        className="field"
        type="tel"
        value={telephone}
        maxLength={longestPractice}
        onChange={setTelephone}
      >
        <Label className="field-label">Telephone</Label>
        <Input className="text-input" />
      </TextField>
      <div className="dialog-answers">
        <Button type="submit" className="button button-primary">
          {answer}
        </Button>
      </div>
    </form>
  );
}
