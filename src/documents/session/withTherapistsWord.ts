import type { SessionDocument } from './sessionDocument';

/** A session that was sent, with what the therapist settled in the kept version of it. */
export function withTherapistsWord(sent: SessionDocument, kept: SessionDocument | null): SessionDocument {
  const signed = kept?.settles.filter(({ by }) => by === 'therapist') ?? [];
  return signed.length === 0 ? sent : { ...sent, settles: [...sent.settles, ...signed] };
}
