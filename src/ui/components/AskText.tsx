import { useState, type FormEvent } from 'react';
import { Button, Dialog, Heading, Label, Text, TextArea, TextField } from 'react-aria-components';
import { DialogBox } from './DialogBox';

interface Props {
  isOpen: boolean;
  onOpenChange: (isOpen: boolean) => void;
  title: string;
  label: string;
  hint: string;
  /** Label of the button that continues. */
  answer: string;
  maxLength: number;
  /** The text at first. */
  initial?: string;
  /** Whether the answer may be empty. */
  mayBeEmpty?: boolean;
  onAnswer: (text: string) => void;
}

/** Asks for a text before something is done. */
export function AskText(props: Props) {
  const { isOpen, onOpenChange, title } = props;
  return (
    <DialogBox isOpen={isOpen} onOpenChange={onOpenChange} isDismissable>
      <Dialog className="dialog">
        <Heading slot="title">{title}</Heading>
        <Form {...props} />
      </Dialog>
    </DialogBox>
  );
}

function Form({ onOpenChange, label, hint, answer, maxLength, initial = '', mayBeEmpty, onAnswer }: Props) {
  const [text, setText] = useState(initial);
  const isReady = mayBeEmpty === true || text.trim() !== '';
  const submit = (event?: FormEvent) => {
    event?.preventDefault();
    if (!isReady) return;
    onOpenChange(false);
    onAnswer(text.trim());
  };
  return (
    <form className="dialog-form" onSubmit={submit}>
      <TextField autoFocus value={text} onChange={setText} maxLength={maxLength} className="field">
        <Label className="field-label">{label}</Label>
        <TextArea
          className="text-input"
          rows={3}
          onKeyDown={(event) => {
            if (event.key === 'Enter' && (event.ctrlKey || event.metaKey)) submit();
          }}
        />
        <Text slot="description" className="small soft">
          {hint}
        </Text>
      </TextField>
      <div className="dialog-answers">
        <Button className="button" onPress={() => onOpenChange(false)}>
          Cancel
        </Button>
        <Button type="submit" className="button button-primary" isDisabled={!isReady}>
          {answer}
        </Button>
      </div>
    </form>
  );
}
