import { createContext, use, type ReactNode } from 'react';
import { useStore } from 'zustand';
import type { Inbox } from './createInbox';
import type { InboxState } from './inboxState';

const InboxContext = createContext<Inbox | null>(null);

export function InboxProvider({ inbox, children }: { inbox: Inbox; children: ReactNode }) {
  return <InboxContext value={inbox}>{children}</InboxContext>;
}

/** The kept sessions as this page shows them. */
export function useInbox(): Inbox {
  const inbox = use(InboxContext);
  if (inbox === null) throw new Error('useInbox needs an InboxProvider above it.');
  return inbox;
}

/** A part of its state; the component is drawn again when that part changes. */
export function useInboxState<Part>(select: (state: InboxState) => Part): Part {
  return useStore(useInbox().store, select);
}
