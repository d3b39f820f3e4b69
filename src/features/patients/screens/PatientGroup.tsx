import type { ReactNode } from 'react';

interface Props {
  /** Where the line of jumps leads. */
  id: string;
  title: string;
  children: ReactNode;
}

/** Cards below the course that belong together, under a name. */
export function PatientGroup({ id, title, children }: Props) {
  return (
    <div className="patient-group">
      <h2 id={id} tabIndex={-1}>
        {title}
      </h2>
      <div className="patient-group-cards">{children}</div>
    </div>
  );
}
