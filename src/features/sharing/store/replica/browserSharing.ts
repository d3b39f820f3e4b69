import { openBrowserReplica } from '#device/replica/openBrowserReplica';
import type { OpenedRepository } from '#device/storage/openRepository';
import { readPeople } from '#documents/practice/peopleNote';
import type { Notes } from '#shell/notes';
import { parseKeyPairs } from '../keyPairs';
import type { SharingWorld } from './createSharing';
import { allowedOrigins } from './serverAddress';

/** The browser as sharing needs it. */
export function browserSharing(
  openRepository: () => Promise<OpenedRepository>,
  notes: Notes,
  log: SharingWorld['log'],
): SharingWorld {
  const policy = document.querySelector<HTMLMetaElement>('meta[http-equiv="Content-Security-Policy"]');
  return {
    openRepository,
    openReplica: openBrowserReplica,
    readPeople: async () => readPeople(await notes.readAnew('people')),
    readKeys: async () => parseKeyPairs(await notes.readAnew('keys')),
    log,
    allowed: allowedOrigins(policy?.content ?? null, location.origin),
    newId: () => crypto.randomUUID(),
    now: () => new Date(),
    pause: (ms, signal) =>
      new Promise((resolve) => {
        const end = () => {
          clearTimeout(timer);
          removeEventListener('online', end);
          signal.removeEventListener('abort', end);
          resolve();
        };
        const timer = setTimeout(end, ms);
        addEventListener('online', end);
        signal.addEventListener('abort', end);
      }),
  };
}
