import { coveringFault, coverVideo } from '#device/frames/videosOnDemand';
import type { OpenedRepository } from '#device/storage/openRepository';
import { openSenderKeys } from '#device/storage/senderKeys';
import { storageProblem } from '#device/storage/storageProblem';
import { deviceSigner } from '#shell/deviceSigner';
import type { Notes } from '#shell/notes';
import { saveBlob } from '#shell/saveBlob';
import type { KeyPair } from '#shell/seal';
import type { ClinicWorld } from './createClinic';
import type { SendingWorld } from './createSending';
import { parseKeyPairs } from './keyPairs';

/** The browser as receiving sessions needs it. */
export function browserClinic(openRepository: () => Promise<OpenedRepository>, notes: Notes): ClinicWorld {
  return {
    openRepository,
    saveBlob,
    now: () => new Date(),
    firstKeys: readable(notes.read('keys')) ?? [],
    readKeys: async () => parseKeyPairs(await notes.readAnew('keys')),
    async writeKeys(keys) {
      if (!notes.isLasting) throw storageProblem('private-window');
      const before = notes.read('keys');
      if (before !== null && readable(before) === null) await notes.write('keys-damaged', before);
      await notes.write('keys', JSON.stringify(keys));
    },
  };
}

/** Null where the keys can't be read. */
function readable(text: string | null): KeyPair[] | null {
  try {
    return parseKeyPairs(text);
  } catch {
    return null;
  }
}

/** The browser as sending a session needs it. */
export function browserSending(openRepository: () => Promise<OpenedRepository>): SendingWorld {
  return {
    openRepository,
    coverVideo,
    coveringFault,
    saveBlob,
    signerFor: deviceSigner(openSenderKeys()),
    now: () => new Date(),
    async share(file) {
      const data = { files: [file] };
      if (!(navigator as Partial<Navigator>).canShare?.(data)) return false;
      try {
        await navigator.share(data);
        return true;
      } catch {
        return false; // Cancelled, or not allowed here: it is saved as a file.
      }
    },
  };
}
