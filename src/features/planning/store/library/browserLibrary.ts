import { isOfLibrary } from '#device/storage/keptLibrary';
import type { OpenedRepository } from '#device/storage/openRepository';
import { openSenderKeys } from '#device/storage/senderKeys';
import { readPeople } from '#documents/practice/peopleNote';
import { deviceSigner, practiceKeyName } from '#shell/deviceSigner';
import type { Notes } from '#shell/notes';
import { saveFile } from '#shell/saveFile';
import type { LibraryWorld } from './createLibrary';

/** The browser as the library needs it. */
export function browserLibrary(notes: Notes, openRepository: () => Promise<OpenedRepository>): LibraryWorld {
  const signerFor = deviceSigner(openSenderKeys());
  const kept = async () => (await openRepository()).repository.library;
  return {
    read: async () => (await kept()).read(),
    change: async (change) => (await kept()).change(change),
    watch: (listener) =>
      void openRepository()
        .then(({ repository }) =>
          repository.subscribe((change) => {
            if (isOfLibrary(change)) listener();
          }),
        )
        .catch(() => undefined), // Where nothing can be opened, nothing changes.
    initials: async () => readPeople(await notes.readAnew('people'))?.initials ?? '',
    signer: () => signerFor(practiceKeyName),
    saveFile,
    newId: () => crypto.randomUUID(),
    now: () => new Date(),
  };
}
