import { EntryField } from './EntryField';

interface Props {
  label: string;
  /** YYYY-MM-DD; empty: none chosen. */
  value: string;
  /** The last day that can be chosen; left out where there is none. */
  max?: string;
  onChange: (value: string) => void;
}

/** A day in an entry's form. */
export function DayField({ label, value, max, onChange }: Props) {
  return (
    <EntryField label={label}>
      {(id) => (
        <input
          id={id}
          type="date"
          className="text-input"
          value={value}
          max={max}
          onChange={({ target }) => onChange(target.value)}
        />
      )}
    </EntryField>
  );
}
