import { useState, type FormEvent } from 'react';
import { Button, Input, Label, Text, TextField } from 'react-aria-components';
import { inventPseudonym } from '#documents/patient/inventPseudonym';
import { nearPseudonym } from '#documents/patient/nearPseudonym';
import { longestPatientText } from '#documents/patient/patientDocument';
import { plainName } from '#documents/schema/plainName';
import { KnownPseudonyms } from './KnownPseudonyms';
import { NearPseudonym } from './NearPseudonym';

interface Props {
  known: readonly string[];
  /** Label of the button that continues. */
  answer: string;
  onAnswer: (pseudonym: string) => void;
  onCancel: () => void;
}

/**
 * Asks for a pseudonym: one of those known, which are suggested as one types, a new one, or one that is made up. One
 * that looks like a slip of a known one is asked about.
 */
export function PseudonymForm({ known, answer, onAnswer, onCancel }: Props) {
  const [text, setText] = useState('');
  const [near, setNear] = useState<string | null>(null);
  const name = plainName(text);
  const isKnown = known.includes(name);
  const write = (next: string) => {
    setText(next);
    setNear(null);
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (name === '') return;
    const meant = nearPseudonym(name, known);
    if (meant !== null && near === null) return setNear(meant);
    onAnswer(name);
  };
  return (
    <form className="dialog-form" onSubmit={submit}>
      <TextField
        autoFocus
        value={text}
        onChange={write}
        maxLength={longestPatientText.pseudonym}
        className="field"
        autoComplete="off"
      >
        <Label className="field-label">Pseudonym</Label>
        <Input className="text-input" />
        <Text slot="description" className="small soft">
          Never a name. {name !== '' && (isKnown ? 'Known on this device.' : 'New on this device.')}
        </Text>
      </TextField>
      <KnownPseudonyms typed={text} known={known} onChoose={write} />
      {near !== null && (
        <NearPseudonym near={near} name={name} onSame={() => onAnswer(near)} onOther={() => onAnswer(name)} />
      )}
      <div className="dialog-answers">
        <Button className="button button-quiet" onPress={() => write(inventPseudonym(known, Math.random))}>
          Make one up
        </Button>
        <Button className="button" onPress={onCancel}>
          Cancel
        </Button>
        <Button type="submit" className="button button-primary" isDisabled={name === '' || near !== null}>
          {answer}
        </Button>
      </div>
    </form>
  );
}
