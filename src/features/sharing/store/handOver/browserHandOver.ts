import type { OpenedRepository } from '#device/storage/openRepository';
import { openSenderKeys } from '#device/storage/senderKeys';
import { readPeople } from '#documents/practice/peopleNote';
import type { Notes } from '#shell/notes';
import { saveBlob } from '#shell/saveBlob';
import { parseKeyPairs } from '../keyPairs';
import { senderSigner } from '../senderSigner';
import type { HandOverWorld } from './createHandOver';

/** In the place of a plan's id: one key signs all that this device hands over. */
const signingName = 'hand-over';

/** The browser as handing over needs it. */
export function browserHandOver(
  openRepository: () => Promise<OpenedRepository>,
  notes: Notes,
): HandOverWorld {
  const signerFor = senderSigner(openSenderKeys());
  return {
    openRepository,
    readKeys: async () => parseKeyPairs(await notes.readAnew('keys')),
    initials: async () => readPeople(await notes.readAnew('people'))?.initials ?? '',
    signer: () => signerFor(signingName),
    saveBlob,
    newId: () => crypto.randomUUID(),
    now: () => new Date(),
  };
}
