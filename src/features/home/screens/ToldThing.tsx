interface Props {
  kind: 'well' | 'practise';
  title: string;
  /** The set that it is about; null where there is only one. */
  of: string | null;
  text: string;
}

/** One point of the summary, with its own drawing: a knee in its lane, a knee on its way there. */
export function ToldThing({ kind, title, of, text }: Props) {
  return (
    <div className="told">
      <svg viewBox="-16 -16 32 32" width="40" height="40" aria-hidden="true">
        <rect x="-7" y="-15" width="14" height="30" fill="var(--lane)" />
        <path d="M-7 -15V15M7 -15V15" stroke="var(--lane-edge)" strokeWidth="1.5" />
        {kind === 'well' ? (
          <circle r="5" fill="var(--in-line)" stroke="var(--mark-outline)" />
        ) : (
          <path d="M15 0H-1M4 -5L-1 0L4 5" fill="none" stroke="var(--ink)" strokeWidth="2.5" />
        )}
      </svg>
      <h3>{title}</h3>
      {of !== null && <p className="small soft told-of">{of}</p>}
      <p className="told-text">{text}</p>
    </div>
  );
}
