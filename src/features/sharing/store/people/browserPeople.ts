import { storageProblem } from '#device/storage/storageProblem';
import type { Notes } from '#shell/notes';
import { saveBlob } from '#shell/saveBlob';
import { parseKeyPairs } from '../keyPairs';
import type { PeopleWorld } from './createPeople';

/** The browser as the list of people needs it. */
export function browserPeople(notes: Notes): PeopleWorld {
  return {
    firstText: notes.read('people'),
    readText: () => notes.readAnew('people'),
    async writeText(text) {
      if (!notes.isLasting) throw storageProblem('private-window');
      await notes.write('people', text);
    },
    onInitials(initials) {
      // A review is signed with the same initials, unless others were given there.
      if ((notes.read('reviewer') ?? '') === '')
        void notes.write('reviewer', initials).catch(() => undefined);
    },
    ownKeys: async () => parseKeyPairs(await notes.readAnew('keys')).map(({ recipient }) => recipient),
    saveBlob,
    now: () => new Date(),
  };
}
