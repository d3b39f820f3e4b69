import { Problem } from '#core/problem';
import { message } from '#words/messages/message';

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

/** What concerns the lock of a device, which is the therapist's; the rest is in `words/messages`. */
const lockSentences = {
  'lock-changed':
    'The lock was changed by something other than this program, so it is not opened. Restore it from a backup, or delete everything that is kept here.',
  'lock-damaged':
    'The lock is damaged, and no passphrase opens what is kept here. Delete everything, then restore it from a backup.',
  'wrong-passphrase':
    'This passphrase does not open what is kept here. Try again: capital letters, spaces and the order of the words count.',
};

function sentenceOf(reason: Exclude<StorageReason, 'failed'>): string {
  return reason in lockSentences
    ? lockSentences[reason as keyof typeof lockSentences]
    : message(`storage-trouble.${reason as Exclude<typeof reason, keyof typeof lockSentences>}`);
}

/** A problem of a kind that needs no detail in its sentence. */
export function storageProblem(reason: Exclude<StorageReason, 'failed'>, cause?: unknown): StorageProblem {
  return new StorageProblem(reason, sentenceOf(reason), { cause });
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
  const detail =
    error instanceof Error && error.message !== '' ? error.message : message('trouble.no-reason');
  return new StorageProblem(
    'failed',
    message('storage-trouble.failed', { reason: detail.replace(/\.$/, '') }),
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
