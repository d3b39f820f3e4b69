import type { ReactNode } from 'react';
import { Message } from './Message';

interface Props {
  /** The sentence says why something is not saved, and what to do; 'no-videos': all but the videos is. */
  storage: { state: 'opening' | 'lasting' } | { state: 'memory' | 'no-videos' | 'blocked'; sentence: string };
  titles: Record<'memory' | 'no-videos' | 'blocked', string>;
  /** Buttons for storage that can't be opened. */
  actions?: ReactNode;
}

/** Says that data is lost when the tab closes, or that storage can't be opened; renders nothing if all is well. */
export function StorageTrouble({ storage, titles, actions }: Props) {
  switch (storage.state) {
    case 'memory':
    case 'no-videos':
      return (
        <Message kind="caution" title={titles[storage.state]}>
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
