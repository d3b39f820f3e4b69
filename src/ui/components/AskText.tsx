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
  /** Answers that are often given, each one press. */
  ready?: readonly string[];
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

function Form(props: Props) {
  const {
    onOpenChange,
    label,
    hint,
    answer,
    maxLength,
    initial = '',
    ready = [],
    mayBeEmpty,
    onAnswer,
  } = props;
  const [text, setText] = useState(initial);
  const isReady = mayBeEmpty === true || text.trim() !== '';
  const give = (answered: string) => {
    onOpenChange(false);
    onAnswer(answered);
  };
  const submit = (event?: FormEvent) => {
    event?.preventDefault();
    if (isReady) give(text.trim());
  };
  return (
    <form className="dialog-form" onSubmit={submit}>
      <TextField autoFocus value={text} onChange={setText} maxLength={maxLength} className="field">
        <Label className="field-label">{label}</Label>
        <TextArea
          className="text-input"
          rows={3}
          onKeyDown={(event) => {
            // With Shift it begins a new line; while letters are composed it chooses one.
            if (event.key !== 'Enter' || event.shiftKey || event.nativeEvent.isComposing) return;
            event.preventDefault();
            submit();
          }}
        />
        <Text slot="description" className="small soft">
          {hint}
        </Text>
      </TextField>
      {ready.length > 0 && (
        <div className="button-row">
          {ready.map((one) => (
            <Button key={one} className="button" onPress={() => give(one)}>
              {one}
            </Button>
          ))}
        </div>
      )}
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
