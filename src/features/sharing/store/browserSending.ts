import { coveringFault, coverVideo } from '#device/frames/videosOnDemand';
import type { OpenedRepository } from '#device/storage/openRepository';
import { storageProblem } from '#device/storage/storageProblem';
import type { Notes } from '#shell/notes';
import { saveBlob } from '#shell/saveBlob';
import type { KeyPair } from '#shell/seal';
import type { ClinicWorld } from './createClinic';
import type { SendingWorld } from './createSending';

/** The browser as receiving sessions needs it. */
export function browserClinic(openRepository: () => Promise<OpenedRepository>, notes: Notes): ClinicWorld {
  return {
    openRepository,
    saveBlob,
    firstKeys: keysOf(notes.read('keys')),
    readKeys: async () => keysOf(await notes.readAnew('keys')),
    async writeKeys(keys) {
      if (!notes.isLasting) throw storageProblem('private-window');
      await notes.write('keys', JSON.stringify(keys));
    },
  };
}

function keysOf(text: string | null): KeyPair[] {
  try {
    const kept = JSON.parse(text ?? '[]') as KeyPair[];
    return kept.filter(
      ({ identity, recipient }) => typeof identity === 'string' && typeof recipient === 'string',
    );
  } catch {
    return [];
  }
}

/** The browser as sending a session needs it. */
export function browserSending(openRepository: () => Promise<OpenedRepository>): SendingWorld {
  return {
    openRepository,
    coverVideo,
    coveringFault,
    saveBlob,
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
