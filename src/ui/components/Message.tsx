import { useEffect, useRef, type ReactNode } from 'react';

interface Props {
  kind: 'plain' | 'caution' | 'problem';
  title?: string | undefined;
  /** The title is a heading, for what the whole result depends on. */
  isLarge?: boolean;
  children: ReactNode;
  /** Buttons to continue. */
  actions?: ReactNode;
}

/** Something to know or to do; a problem is announced at once and scrolled into view. */
export function Message({ kind, title, isLarge = false, children, actions }: Props) {
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (kind === 'problem') box.current?.scrollIntoView({ block: 'nearest' });
  }, [kind, children]);
  return (
    <div
      ref={box}
      className={`message message-${kind} ${isLarge ? 'message-large' : ''}`}
      role={kind === 'problem' ? 'alert' : undefined}
    >
      <div>
        {title !== undefined && (isLarge ? <h2>{title}</h2> : <strong>{title}. </strong>)}
        {children}
      </div>
      {actions}
    </div>
  );
}
