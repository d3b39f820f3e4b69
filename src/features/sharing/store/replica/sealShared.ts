import { base64 } from '@scure/base';
import { contentHash } from '#documents/practice/contentHash';
import type { SharedDocument } from '#documents/practice/mergeShared';
import {
  readSharedHead,
  sharedBounds,
  sharedVersionOf,
  type SharedHead,
} from '#documents/practice/sharedHead';
import type { SharedPiece } from '#documents/practice/sharedPiece';
import { markFor } from '#shell/memberMarks';
import { isSealed, sealFor, unseal, type KeyPair } from '#shell/seal';
import { firstLine } from '../firstLine';
import { hashOf, packPart, unpackPart } from '../packedPart';
import { Refusal } from './refusal';

/** What the sender says of a document, without what follows from it. */
export type SharedFacts = Omit<SharedHead, 'format' | 'version' | 'sender' | 'content' | 'part'>;

/** A mark takes 43 characters, quotes and a comma. */
const marksBytes = 60 * 46;
/** What age, base64 and the two first lines add at most. */
const addedBytes = sharedBounds.headBytes + marksBytes + 20_000;
/** Longest text of a sealed copy, characters. */
const longestSealed = Math.ceil(((sharedBounds.bytes + addedBytes) * 4) / 3);

/**
 * Seals a version for members: a line of JSON that says what follows, a line with a mark for each recipient over the first
 * one, then the document, deflated.
 *
 * @param document  null where it was deleted
 * @returns  base64
 * @throws Refusal  'invalid' where it is too large to be shared
 */
export async function sealShared(
  facts: SharedFacts,
  document: SharedDocument | null,
  own: KeyPair,
): Promise<string> {
  const packed = document === null ? null : packPart(document);
  if (
    packed !== null &&
    (packed.facts.bytes > sharedBounds.bytes || packed.facts.unpackedBytes > sharedBounds.unpackedBytes)
  )
    throw new Refusal('invalid');
  const head: SharedHead = {
    format: 'overfoot-shared',
    version: sharedVersionOf(facts.kind),
    ...facts,
    sender: own.recipient,
    content: document === null ? null : contentHash(facts.kind, document),
    part: packed?.facts ?? null,
  };
  const line = new TextEncoder().encode(JSON.stringify(head));
  const marks = facts.recipients.map((recipient) => markFor(own.recipient, recipient, own, line));
  const whole = new Blob([line, `\n${JSON.stringify(marks)}\n`, ...(packed === null ? [] : [packed.part])]);
  const sealed = await sealFor(facts.recipients, whole);
  return base64.encode(new Uint8Array(await sealed.arrayBuffer()));
}

/** @returns  base64; who made it is said by the document that it belongs to, which has its SHA-256 */
export async function sealPiece(recipients: readonly string[], piece: Blob): Promise<string> {
  return base64.encode(new Uint8Array(await (await sealFor(recipients, piece)).arrayBuffer()));
}

/**
 * Opens the piece of a video that belongs to a document.
 *
 * @throws Refusal
 */
export async function openPiece(
  sealed: Blob | null,
  { bytes, sha256 }: Pick<SharedPiece, 'bytes' | 'sha256'>,
  keys: readonly KeyPair[],
): Promise<Blob> {
  if (sealed === null || sealed.size > bytes + addedBytes || !(await isSealed(sealed)))
    throw new Refusal('garbage');
  const { opened } = await openWith(keys, sealed);
  if (opened.size !== bytes || (await hashOf(opened)) !== sha256) throw new Refusal('forged');
  return opened;
}

export interface OpenedShared {
  head: SharedHead;
  /** Untrusted still; null where it was deleted. */
  document: unknown;
}

/**
 * Opens what may be anything.
 *
 * @param sealed  as sealShared() returns it; null where it is no text
 * @param replicaId  under which it lay
 * @param isMember  whose documents are read, by public key
 * @throws Refusal
 */
export async function openShared(
  sealed: string | null,
  replicaId: string,
  keys: readonly KeyPair[],
  isMember: (key: string) => boolean,
): Promise<OpenedShared> {
  const blob = sealedBlob(sealed);
  if (blob === null || !(await isSealed(blob))) throw new Refusal('garbage');
  const { opened, own } = await openWith(keys, blob);
  const first = await firstLine(opened, sharedBounds.headBytes);
  const second = first === null ? null : await firstLine(opened.slice(first.endBytes), marksBytes);
  if (first === null || second === null) throw new Refusal('garbage');
  const head = read(() => readSharedHead(first.line), 'invalid');
  if (!isMember(head.sender)) throw new Refusal('no-member');
  const marks = read(() => JSON.parse(second.line) as unknown, 'garbage');
  const line = new TextEncoder().encode(first.line);
  const mark = read(() => markFor(head.sender, own.recipient, own, line), 'forged');
  if (!Array.isArray(marks) || marks[head.recipients.indexOf(own.recipient)] !== mark)
    throw new Refusal('forged');
  if (head.replicaId !== replicaId) throw new Refusal('other-place');
  const part = opened.slice(first.endBytes + second.endBytes);
  if (head.part === null) {
    if (part.size > 0) throw new Refusal('forged');
    return { head, document: null };
  }
  if (part.size !== head.part.bytes || (await hashOf(part)) !== head.part.sha256) throw new Refusal('forged');
  const text = await unpackPart(part, head.part.unpackedBytes, '').catch((cause: unknown) => {
    throw new Refusal('invalid', { cause });
  });
  return { head, document: read(() => JSON.parse(text) as unknown, 'invalid') };
}

function sealedBlob(sealed: string | null): Blob | null {
  if (sealed === null || sealed.length > longestSealed) return null;
  try {
    return new Blob([base64.decode(sealed) as Uint8Array<ArrayBuffer>]);
  } catch {
    return null;
  }
}

async function openWith(keys: readonly KeyPair[], blob: Blob): Promise<{ opened: Blob; own: KeyPair }> {
  for (const own of keys) {
    try {
      return { opened: await unseal(own.identity, blob), own };
    } catch {
      // It may be sealed for another one of this device's keys.
    }
  }
  throw new Refusal('other-people');
}

function read<Value>(work: () => Value, reason: 'invalid' | 'garbage' | 'forged'): Value {
  try {
    return work();
  } catch (cause) {
    throw new Refusal(reason, { cause });
  }
}
