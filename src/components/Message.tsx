import { useEffect, useRef, type ReactNode } from 'react';

interface Props {
  kind: 'plain' | 'caution' | 'problem';
  title?: string;
  children: ReactNode;
  /** Buttons: the way on. */
  actions?: ReactNode;
}

/** Something to know or to do; a problem is announced at once and brought into sight. */
export function Message({ kind, title, children, actions }: Props) {
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (kind === 'problem') box.current?.scrollIntoView({ block: 'nearest' });
  }, [kind, children]);
  return (
    <div ref={box} className={`message message-${kind}`} role={kind === 'problem' ? 'alert' : undefined}>
      <div>
        {title !== undefined && <strong>{title}. </strong>}
        {children}
      </div>
      {actions}
    </div>
  );
}
