import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';

/** Half of a SHA-256: names of notes are short, and ids are not guessed from it. */
const hashBytes = 16;

/**
 * Name of the note that a session was deleted here, by the hash of its id: it tells nothing but that this session
 * is not to come back unasked.
 */
export function tombstoneName(sessionId: string): string {
  return `deleted:${bytesToHex(sha256(new TextEncoder().encode(sessionId)).subarray(0, hashBytes))}`;
}

/** Name of the note of when a session was sent from this device. */
export function sentOutName(sessionId: string): string {
  return `sent-out:${sessionId}`;
}

/** Name of the note that the question why nothing was done since then was closed without an answer. */
export function silenceClosedName(since: string): string {
  return `silence-closed:${since}`;
}

/** Name of the note of when the version of a session that is kept was sent, so that an older one is noticed. */
export function sentName(sessionId: string): string {
  return `sent:${sessionId}`;
}

/** Name of the note of which entries of a patient's log were seen here last. */
export function logSeenName(patientId: string): string {
  return `log-seen:${patientId}`;
}
