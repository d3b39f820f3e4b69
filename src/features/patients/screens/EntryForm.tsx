import { useState, type FormEvent, type ReactNode } from 'react';
import { Button } from 'react-aria-components';
import { longestPatientText } from '#documents/patient/patientDocument';
import { useInitials } from '#features/sharing/screens/useInitials';
import { EntryField } from './EntryField';
import './programme.css';

interface Props {
  /** The fields. */
  children: ReactNode;
  /** What is missing or wrong, as a sentence; null where nothing is. */
  lack: () => string | null;
  /** Label of the button that keeps it. */
  answer: string;
  onKeep: (by: string) => Promise<void>;
  onClose: () => void;
}

/** A form whose entry is signed with initials. */
export function EntryForm({ children, lack, answer, onKeep, onClose }: Props) {
  const { by, setBy, remember } = useInitials();
  const [lacks, setLacks] = useState<string | null>(null);
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    const found = lack() ?? (by.trim() === '' ? 'Sign with your initials.' : null);
    setLacks(found);
    if (found !== null) return;
    remember(by);
    await onKeep(by.trim());
    onClose();
  };
  return (
    <form className="programme-decide" onSubmit={(event) => void submit(event)}>
      {children}
      <EntryField label="Your initials">
        {(id) => (
          <input
            id={id}
            className="text-input programme-initials"
            value={by}
            maxLength={longestPatientText.by}
            onChange={({ target }) => setBy(target.value)}
          />
        )}
      </EntryField>
      {lacks !== null && <p role="alert">{lacks}</p>}
      <div className="button-row">
        <Button className="button button-primary" type="submit">
          {answer}
        </Button>
        <Button className="button" onPress={onClose}>
          Cancel
        </Button>
      </div>
    </form>
  );
}
