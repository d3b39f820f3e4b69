import { createContext, use, type ReactNode } from 'react';
import { useStore } from 'zustand';
import type { Clinic, ClinicState } from './createClinic';
import type { Sending, SendingState } from './createSending';

const SendingContext = createContext<{ clinic: Clinic; sending: Sending } | null>(null);

export function SendingProvider(props: { clinic: Clinic; sending: Sending; children: ReactNode }) {
  const { clinic, sending, children } = props;
  return <SendingContext value={{ clinic, sending }}>{children}</SendingContext>;
}

function useBoth() {
  const both = use(SendingContext);
  if (both === null) throw new Error('Sending needs a SendingProvider above it.');
  return both;
}

/** Receiving sessions. */
export function useClinic(): Clinic {
  return useBoth().clinic;
}

export function useClinicState<Part>(select: (state: ClinicState) => Part): Part {
  return useStore(useBoth().clinic.store, select);
}

/** Sending one. */
export function useSending(): Sending {
  return useBoth().sending;
}

export function useSendingState<Part>(select: (state: SendingState) => Part): Part {
  return useStore(useBoth().sending.store, select);
}
