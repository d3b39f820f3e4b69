import { EntryField } from './EntryField';

interface Props {
  label: string;
  value: string;
  maxLength: number;
  /** Of the keys that a phone shows; text where left out. */
  inputMode?: 'decimal' | 'numeric';
  onChange: (value: string) => void;
}

/** A line of text in an entry's form. */
export function LineField({ label, value, maxLength, inputMode, onChange }: Props) {
  return (
    <EntryField label={label}>
      {(id) => (
        <input
          id={id}
          className="text-input"
          inputMode={inputMode}
          value={value}
          maxLength={maxLength}
          onChange={({ target }) => onChange(target.value)}
        />
      )}
    </EntryField>
  );
}
