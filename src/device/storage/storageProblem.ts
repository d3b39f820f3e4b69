import { Problem } from '#core/problem';

export type StorageReason =
  | 'refused'
  | 'private-window'
  | 'unsupported'
  | 'full'
  | 'newer'
  | 'silent'
  | 'other-tab'
  | 'missing'
  | 'changed'
  | 'damaged'
  | 'locked'
  | 'lock-changed'
  | 'lock-damaged'
  | 'wrong-passphrase'
  | 'failed';

/** Something that can't be kept on this device or read back, with a sentence that says why and what to do. */
export class StorageProblem extends Problem {
  constructor(
    readonly reason: StorageReason,
    message: string,
    options?: ErrorOptions,
  ) {
    super('storage', message, options);
    this.name = 'StorageProblem';
  }
}

const sentences: Record<Exclude<StorageReason, 'failed'>, string> = {
  refused:
    'The browser refuses to keep anything for this page. Allow site data for it in the browser’s settings, then reload.',
  'private-window':
    'The browser keeps nothing here, as private windows do. Open this page in an ordinary window to keep recordings.',
  unsupported:
    'This browser can’t keep recordings on the device. Update it, or open this page in another browser, over https.',
  full: 'This device’s storage is full. Delete old recordings or other files, then try again.',
  newer: 'What is kept here was written by a newer version of this program. Reload the page to get it.',
  silent:
    'The device’s storage does not answer. Close all other tabs of this program, then reload this one; what is kept stays.',
  'other-tab': 'Another tab of this program is in the way. Close all its other tabs, then reload this one.',
  missing:
    'This is no longer kept on this device. It may have been deleted in another tab, or with the browser’s site data; reload the page.',
  changed:
    'Another tab has changed this since it was opened here, and nothing was overwritten. Copy what you wrote here, then open it again.',
  damaged: 'What is kept of this on the device can’t be read. Restore it from a saved file, or delete it.',
  'lock-changed':
    'The lock was changed by something other than this program, so it is not opened. Restore it from a backup, or delete everything that is kept here.',
  'lock-damaged':
    'The lock is damaged, and no passphrase opens what is kept here. Delete everything, then restore it from a backup.',
  locked: 'What is kept here is locked by a passphrase. Reload the page to be asked for it.',
  'wrong-passphrase':
    'This passphrase does not open what is kept here. Try again: capital letters, spaces and the order of the words count.',
};

/** A problem of a kind that needs no detail in its sentence. */
export function storageProblem(reason: Exclude<StorageReason, 'failed'>, cause?: unknown): StorageProblem {
  return new StorageProblem(reason, sentences[reason], { cause });
}

/** Names of browser and Dexie errors, and what they mean. */
const reasonsByName: Record<string, Exclude<StorageReason, 'failed'>> = {
  SecurityError: 'refused',
  NotAllowedError: 'refused',
  // A read-only database: private windows of older browsers.
  InvalidStateError: 'private-window',
  MissingAPIError: 'unsupported',
  NotSupportedError: 'unsupported',
  QuotaExceededError: 'full',
  VersionError: 'newer',
  DatabaseClosedError: 'other-tab',
  TimeoutError: 'silent',
  // A video file that another tab holds open.
  NoModificationAllowedError: 'other-tab',
  NotFoundError: 'missing',
};

/** What an error may hold; not every browser throws an Error. */
interface Fault {
  name: string;
  message?: string;
  inner?: unknown;
  cause?: unknown;
}

/** Turns whatever a browser's storage threw into a problem with a sentence. */
export function explainStorage(error: unknown): StorageProblem {
  for (const fault of withCauses(error)) {
    if (fault instanceof StorageProblem) return fault;
    const reason = reasonsByName[fault.name] ?? (isDenial(fault) ? 'refused' : undefined);
    if (reason !== undefined) return storageProblem(reason, error);
  }
  const detail = error instanceof Error && error.message !== '' ? error.message : 'no reason was given';
  return new StorageProblem(
    'failed',
    `The device’s storage failed (${detail.replace(/\.$/, '')}). Reload the page; if it happens again, free some space.`,
    { cause: error },
  );
}

/** Chromium reports settings that refuse storage by an error without a name of its own. */
function isDenial({ name, message = '' }: Fault): boolean {
  return name === 'UnknownError' && /denied permission/i.test(message);
}

/** An error and its cause: Dexie wraps the browser's own error as `inner`. */
function withCauses(error: unknown): Fault[] {
  const chain: Fault[] = [];
  let at = error as Fault | null | undefined;
  while (typeof at === 'object' && at !== null && !chain.includes(at)) {
    chain.push(at);
    at = (at.inner ?? at.cause) as typeof at;
  }
  return chain.reverse(); // The innermost one is the most specific.
}
