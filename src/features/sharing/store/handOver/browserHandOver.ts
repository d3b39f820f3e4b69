import type { OpenedRepository } from '#device/storage/openRepository';
import { openSenderKeys } from '#device/storage/senderKeys';
import { readPeople } from '#documents/practice/peopleNote';
import { deviceSigner, practiceKeyName } from '#shell/deviceSigner';
import type { Notes } from '#shell/notes';
import { saveBlob } from '#shell/saveBlob';
import { parseKeyPairs } from '../keyPairs';
import type { HandOverWorld } from './createHandOver';

/** The browser as handing over needs it. */
export function browserHandOver(
  openRepository: () => Promise<OpenedRepository>,
  notes: Notes,
): HandOverWorld {
  const signerFor = deviceSigner(openSenderKeys());
  return {
    openRepository,
    readKeys: async () => parseKeyPairs(await notes.readAnew('keys')),
    initials: async () => readPeople(await notes.readAnew('people'))?.initials ?? '',
    signer: () => signerFor(practiceKeyName),
    saveBlob,
    newId: () => crypto.randomUUID(),
    now: () => new Date(),
  };
}
