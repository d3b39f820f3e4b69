import type { ReactNode } from 'react';
import { CheckboxButton, CheckboxField } from 'react-aria-components';

interface Props {
  isSelected: boolean;
  onChange: (isSelected: boolean) => void;
  children: ReactNode;
}

/** A box to tick, with its words beside it. */
export function Tick({ isSelected, onChange, children }: Props) {
  return (
    <CheckboxField isSelected={isSelected} onChange={onChange}>
      <CheckboxButton className="plan-tick">
        <span className="plan-tick-box" aria-hidden="true">
          {isSelected ? '✓' : ''}
        </span>
        {children}
      </CheckboxButton>
    </CheckboxField>
  );
}
