import type { OpenedRepository } from '#device/storage/openRepository';
import { openSenderKeys } from '#device/storage/senderKeys';
import { readPeople } from '#documents/practice/peopleNote';
import { deviceSigner, practiceKeyName } from './deviceSigner';
import type { Notes } from './notes';
import { createSignedLog, type SignedLog } from './signedLog';

/** The log of who did what, as the browser keeps it. */
export function browserSignedLog(openRepository: () => Promise<OpenedRepository>, notes: Notes): SignedLog {
  const signerFor = deviceSigner(openSenderKeys());
  return createSignedLog({
    openRepository,
    initials: async () =>
      (readPeople(await notes.readAnew('people'))?.initials ?? '') || (notes.read('reviewer') ?? ''),
    signer: () => signerFor(practiceKeyName),
    newId: () => crypto.randomUUID(),
    now: () => new Date(),
  });
}
