import type { ReactNode } from 'react';

interface Props {
  kind: 'plain' | 'caution' | 'problem';
  title?: string;
  children: ReactNode;
  /** Buttons: the way on. */
  actions?: ReactNode;
}

/** Something to know or to do; a problem is announced at once. */
export function Message({ kind, title, children, actions }: Props) {
  return (
    <div className={`message message-${kind}`} role={kind === 'problem' ? 'alert' : undefined}>
      <div>
        {title !== undefined && <strong>{title}. </strong>}
        {children}
      </div>
      {actions}
    </div>
  );
}
