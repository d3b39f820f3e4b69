import { useState, type ReactNode } from 'react';
import { Button } from 'react-aria-components';

interface Props {
  /** Of the button. */
  label: string;
  /** The form, which calls what it is given when it is done with. */
  children: (close: () => void) => ReactNode;
}

/** A button with a form that takes its place until it is kept or cancelled. */
export function OpensForm({ label, children }: Props) {
  const [isOpen, setOpen] = useState(false);
  if (isOpen) return children(() => setOpen(false));
  return (
    <div className="button-row">
      <Button className="button" onPress={() => setOpen(true)}>
        {label}
      </Button>
    </div>
  );
}
