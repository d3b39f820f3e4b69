import { useState, type ReactNode } from 'react';
import './programme.css';

interface Props {
  id: string;
  title: string;
  /** What is said beside the title while there is no content; null where there is some. */
  empty: string | null;
  children: ReactNode;
}

/** A card below the course: open where it has content, and one line that opens where it has none. */
export function FoldCard({ id, title, empty, children }: Props) {
  const [chosen, setChosen] = useState<boolean | null>(null);
  return (
    <section className="card fold-card" aria-labelledby={id}>
      <details
        open={chosen ?? empty === null}
        onToggle={({ currentTarget }) => setChosen(currentTarget.open)}
      >
        <summary>
          <h3 id={id}>{title}</h3>
          {empty !== null && <span className="small soft">{empty}</span>}
        </summary>
        <div className="programme">{children}</div>
      </details>
    </section>
  );
}
