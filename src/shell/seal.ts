import { Decrypter, Encrypter, generateX25519Identity, identityToRecipient } from 'age-encryption';
import { Problem } from '#core/problem';
import { message } from '#words/messages/message';

/** A key pair in the open age format. */
export interface KeyPair {
  /** 'AGE-SECRET-KEY-1…': opens; never leaves the device but sealed. */
  identity: string;
  /** 'age1…': seals; part of the plans. */
  recipient: string;
}

export async function newKeyPair(): Promise<KeyPair> {
  return keyPairOf(await generateX25519Identity());
}

async function keyPairOf(identity: string): Promise<KeyPair> {
  return { identity, recipient: await identityToRecipient(identity) };
}

/** Seals a file so that only the holder of one of the keys can open it; each of them can. */
export async function sealFor(recipients: readonly string[], blob: Blob): Promise<Blob> {
  const encrypter = new Encrypter();
  for (const recipient of recipients) encrypter.addRecipient(recipient);
  return gather(await encrypter.encrypt(blob.stream()));
}

/** Whether it is a public key in the age format, with its check sum. */
export function isRecipient(key: string): boolean {
  try {
    new Encrypter().addRecipient(key);
    return key.startsWith('age1');
  } catch {
    return false;
  }
}

/** @throws Problem  where it is not sealed, is sealed for another key, or was changed or cut */
export async function unseal(
  identity: string,
  blob: Blob,
  whatNext = 'Ask the patient to send it again.',
): Promise<Blob> {
  const decrypter = new Decrypter();
  decrypter.addIdentity(identity);
  return open(decrypter, blob, {
    otherKey:
      'It is sealed for another key. Open it on the device that the plan came from, or restore that key here from its backup.',
    broken: `Its seal is broken: a part of it was changed or lost on the way. ${whatNext}`,
  });
}

/**
 * Seals a file so that only the passphrase opens it.
 *
 * @param scryptWorkFactor  log2 of the cost of trying a passphrase; age's default if left out
 */
export async function sealByPassphrase(
  passphrase: string,
  blob: Blob,
  scryptWorkFactor?: number,
): Promise<Blob> {
  return gather(await encrypterFor(passphrase, scryptWorkFactor).encrypt(blob.stream()));
}

/** @throws Problem  where it is not sealed, by another passphrase, or was changed or cut */
export async function unsealByPassphrase(passphrase: string, blob: Blob): Promise<Blob> {
  const decrypter = new Decrypter();
  decrypter.addPassphrase(passphrase);
  return open(decrypter, blob, {
    otherKey: message('plan-trouble.passphrase'),
    broken: message('plan-trouble.broken'),
  });
}

async function open(
  decrypter: Decrypter,
  blob: Blob,
  sentences: { otherKey: string; broken: string },
): Promise<Blob> {
  if (!(await isSealed(blob)))
    throw new Problem('file', 'It is not a sealed file. Choose one that ends in “.age”.');
  try {
    return await gather(await decrypter.decrypt(blob.stream()));
  } catch (error) {
    const isOtherKey = error instanceof Error && /no identity matched/i.test(error.message);
    throw new Problem('file', isOtherKey ? sentences.otherKey : sentences.broken);
  }
}
const ageStart = 'age-encryption.org/v1\n';

/** Whether a file is in the age format, by its first line. */
export async function isSealed(blob: Blob): Promise<boolean> {
  return (await blob.slice(0, ageStart.length).text()) === ageStart;
}

/**
 * The key as a file that a passphrase opens.
 *
 * @param scryptWorkFactor  log2 of the cost of trying a passphrase; age's default if left out
 */
export async function backUpKey(
  { identity }: KeyPair,
  passphrase: string,
  scryptWorkFactor?: number,
): Promise<Blob> {
  const sealed = await encrypterFor(passphrase, scryptWorkFactor).encrypt(`${identity}\n`);
  return new Blob([sealed as Uint8Array<ArrayBuffer>]);
}

function encrypterFor(passphrase: string, scryptWorkFactor: number | undefined): Encrypter {
  const encrypter = new Encrypter();
  encrypter.setPassphrase(passphrase);
  if (scryptWorkFactor !== undefined) encrypter.setScryptWorkFactor(scryptWorkFactor);
  return encrypter;
}

/** @throws Problem  where the passphrase is another one, or it is no backup of a key */
export async function restoreKey(file: Blob, passphrase: string): Promise<KeyPair> {
  const wrong = (sentence: string) => new Problem('file', sentence);
  if (file.size > largestBackupBytes) throw wrong('This is not a key backup.');
  const decrypter = new Decrypter();
  decrypter.addPassphrase(passphrase);
  let text: string;
  try {
    text = await decrypter.decrypt(new Uint8Array(await file.arrayBuffer()), 'text');
  } catch {
    throw wrong('The passphrase does not open this file, or the file is not a key backup.');
  }
  try {
    return await keyPairOf(text.trim());
  } catch {
    throw wrong('This file contains no key.');
  }
}
const largestBackupBytes = 10_000;

function gather(stream: ReadableStream<Uint8Array>): Promise<Blob> {
  return new Response(stream as ReadableStream<Uint8Array<ArrayBuffer>>).blob();
}
