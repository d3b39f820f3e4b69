import { useId, type ReactNode } from 'react';

interface Props {
  label: string;
  /** The field itself, with the id that its label points to. */
  children: (id: string) => ReactNode;
}

/** A label and its field, in the two columns of an entry's form. */
export function EntryField({ label, children }: Props) {
  const id = useId();
  return (
    <div className="programme-field">
      <label htmlFor={id}>{label}</label>
      {children(id)}
    </div>
  );
}
