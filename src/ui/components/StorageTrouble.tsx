import type { ReactNode } from 'react';
import { Message } from './Message';

interface Props {
  /** The sentence says why something is not kept, and what to do. */
  storage: { state: 'opening' | 'lasting' } | { state: 'memory' | 'blocked'; sentence: string };
  titles: Record<'memory' | 'blocked', string>;
  /** Buttons for storage that can't be opened. */
  actions?: ReactNode;
}

/** That what is kept is gone with the tab, or that it can't be opened; nothing where all is well. */
export function StorageTrouble({ storage, titles, actions }: Props) {
  switch (storage.state) {
    case 'memory':
      return (
        <Message kind="caution" title={titles.memory}>
          {storage.sentence}
        </Message>
      );
    case 'blocked':
      return (
        <Message kind="problem" title={titles.blocked} actions={actions}>
          {storage.sentence}
        </Message>
      );
    default:
      return null;
  }
}
