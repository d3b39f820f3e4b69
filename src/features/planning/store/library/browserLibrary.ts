import { openSenderKeys } from '#device/storage/senderKeys';
import { readPeople } from '#documents/practice/peopleNote';
import { deviceSigner, practiceKeyName } from '#shell/deviceSigner';
import type { Notes } from '#shell/notes';
import { saveFile } from '#shell/saveFile';
import type { LibraryWorld } from './createLibrary';

/** The browser as the library needs it. */
export function browserLibrary(notes: Notes): LibraryWorld {
  const signerFor = deviceSigner(openSenderKeys());
  return {
    read: (name) => notes.read(name),
    write: (text) => notes.write('library', text),
    initials: async () => readPeople(await notes.readAnew('people'))?.initials ?? '',
    signer: () => signerFor(practiceKeyName),
    saveFile,
    newId: () => crypto.randomUUID(),
    now: () => new Date(),
  };
}
