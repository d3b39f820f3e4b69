import type { OpenedRepository } from '../../storage/openRepository';
import { saveBlob } from '../saveBlob';
import type { ClinicWorld } from './createClinic';
import type { SendingWorld } from './createSending';
import type { KeyPair } from './seal';

const keysName = 'overfoot-keys';

/** The browser as receiving sessions needs it; keys lie in its own small storage. */
export function browserClinic(
  openRepository: () => Promise<OpenedRepository>,
  onKept: () => void,
): ClinicWorld {
  return {
    openRepository,
    onKept,
    saveBlob,
    readKeys() {
      try {
        const kept = JSON.parse(localStorage.getItem(keysName) ?? '[]') as KeyPair[];
        return kept.filter(
          ({ identity, recipient }) => typeof identity === 'string' && typeof recipient === 'string',
        );
      } catch {
        return [];
      }
    },
    writeKeys: (keys) => localStorage.setItem(keysName, JSON.stringify(keys)),
  };
}

/** The browser as sending a session needs it. */
export function browserSending(openRepository: () => Promise<OpenedRepository>): SendingWorld {
  return {
    openRepository,
    saveBlob,
    now: () => new Date(),
    async share(file) {
      const data = { files: [file] };
      if (!(navigator as Partial<Navigator>).canShare?.(data)) return false;
      try {
        await navigator.share(data);
        return true;
      } catch {
        return false; // Called off, or not allowed here: it is saved as a file.
      }
    },
  };
}
